using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out one hang: how it tilts, what its picks and its joints carry, how low it comes.</summary>
internal sealed class HangStatics(Brief brief, Ground ground, SoundPlan sound, LeadsUp leads, IReadOnlyList<PlacedBridle> bridles)
{
    private static readonly Figure<Mass> NoMass = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>The hang, worked out as far as it can be.</summary>
    public HangPlan Plan(PlacedHang placed)
    {
        var stack = sound.Hangs.First(hang => hang.Name == placed.Name);
        List<CarriedLoad> frame = [.. FrameLoads(placed, stack)];
        List<CarriedLoad> boxes = [.. stack.Boxes.Select(box => LoadOf(box.Piece, $"{box.Piece.Name}, {box.Piece.Item}"))];
        var facts = new HangFacts(stack, frame, boxes);
        List<CarriedLoad> all = [.. frame, .. boxes];
        var weight = Total($"{placed.Name}, all that hangs", all);
        var holding = new HangHolding(placed, facts, all, weight);
        var plan = new HangPlan(placed, stack, all, weight, [.. facts.Missing, .. holding.Missing])
        {
            UnderFrame = Total($"{placed.Name}, under its frame", boxes),
            Chain = facts.Chain,
            Tilt = holding.Tilt,
            Holes = holding.Holes,
            Centre = holding.Centre,
        };
        plan = plan with { State = plan.Missing.Count == 0 && plan.Chain is { } chain && plan.Tilt.Value is { } tilt ? chain.At(tilt) : null };
        var heights = new HangReach(plan, facts, holding, ground);
        plan = plan with
        {
            Boxes = new HangJoints(plan, facts, holding, boxes, brief.Company.Policies.Rigging.DynamicFactor).Boxes(),
            Drop = heights.Drop,
            Bottom = heights.Bottom,
            PickHeight = heights.PickHeight,
            StaysAbove = placed.Flown.StaysAbove is { } floor ? HangHeights.AboveFloor(floor, ground) : null,
        };
        var picks = new HangPicks(brief, ground, plan, facts, holding, heights, bridles);
        var (least, most) = picks.Tilts();
        var wind = HangWind.Of(brief, plan);
        return plan with { Picks = wind?.Between(picks.All()) ?? picks.All(), LeastTilt = least, MostTilt = most, UnevenMoving = picks.Uneven, Wind = wind };
    }

    private IEnumerable<CarriedLoad> FrameLoads(PlacedHang placed, StackPlan stack)
    {
        if (stack.Frame is { } frame)
        {
            yield return LoadOf(frame.Piece, $"frame, {frame.Piece.Item}");
        }

        foreach (var piece in stack.FixedToFrame.Where(piece => piece.Why is Need.AskedFor))
        {
            yield return LoadOf(piece, piece.Item);
        }

        if (leads.On(stack.Name, stack.Boxes.Select(box => box.Piece.Name).Concat(LeadsUp.Motors(placed.Picks)).ToHashSet(StringComparer.Ordinal)) is { } ends)
        {
            yield return new CarriedLoad($"{ends.Count} leads that end on it", ends.Weight, null, null, null, 0);
        }
    }

    // With what joins it and what comes with it.
    private CarriedLoad LoadOf(Piece piece, string what)
    {
        var parts = sound.Pieces.Where(part => part.Address == piece.Address || part.Address.Text.StartsWith(piece.Address.Text + "/", StringComparison.Ordinal));
        return new CarriedLoad(what, StackFigures.Weight(parts, brief.Company.Policies.WeightMargin, $"{piece.Name} with what comes with it"), piece.Kind?.Weight?.How, null, null, 0);
    }

    private static Figure<Mass> Total(string name, List<CarriedLoad> loads) => loads.Count == 0 ? NoMass
        : Sum.Of(name, "W = Σ wⱼ", Publication.Arithmetic)
            .PutAll("wⱼ", loads.Select(load => load.Weight))
            .Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
}

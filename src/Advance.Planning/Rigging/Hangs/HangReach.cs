using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How low a hang comes, and how high its holes are.</summary>
internal sealed class HangReach
{
    private readonly HangPlan plan;
    private readonly HangFacts facts;
    private readonly HangHolding holding;

    /// <param name="plan">The hang, as it tilts.</param>
    /// <param name="facts">What is known of it.</param>
    /// <param name="holding">By which holes it is held.</param>
    /// <param name="ground">For heights above the deck.</param>
    public HangReach(HangPlan plan, HangFacts facts, HangHolding holding, Ground ground)
    {
        (this.plan, this.facts, this.holding) = (plan, facts, holding);
        Drop = DropOf();
        var flown = plan.Placed.Flown;
        (Bottom, PickHeight) = flown switch
        {
            { Trim: { } trim } when HangHeights.AboveFloor(trim, ground) is var low => (low, Together("H = b + d", "b", low, (one, drop) => one + drop)),
            { PickTrim: { } pick } when HangHeights.AboveFloor(pick, ground) is var high => (Together("b = H − d", "H", high, (one, drop) => one - drop), high),
            _ => (Unknown, Unknown),
        };
    }

    /// <summary>How far its lowest edge is below its hole, of two below the front one.</summary>
    public Figure<Length> Drop { get; }

    /// <summary>Of its lowest edge above the floor.</summary>
    public Figure<Length> Bottom { get; }

    /// <summary>Of its hole above the floor, of two of the front one.</summary>
    public Figure<Length> PickHeight { get; }

    private Figure<Length> Unknown => new(null, facts.Doubts, Reason.Derived.It);

    /// <summary>A hole above the floor.</summary>
    public Figure<Length> HeightOf(int pick)
    {
        if (plan.State is not { } state || Front is not { } front || holding.Used[pick] is not { } hole || hole == holding.Used[front])
        {
            return PickHeight;
        }

        var lower = state.PlaceOf(PickHole.Of(holding.Used[front]!)).Z - state.PlaceOf(PickHole.Of(hole)).Z;
        return Sum.Of($"{plan.Name}, hole {hole.Name} above the floor", "h = H − v", Publication.Arithmetic).Put("H", PickHeight).Put("v", facts.At(lower)).Gives((high, less) => high - less);
    }

    /// <summary>Which pick is the front one; null where nobody knows.</summary>
    public int? Front => holding.Used.Count == 0 || holding.Used.Any(hole => hole is null || !hole.Behind.IsKnown) ? null
        : holding.Used.Index().MinBy(one => one.Item!.Behind.Value.Meters).Index;

    private Figure<Length> DropOf()
    {
        if (plan.State is not { } state || Front is not { } front || !facts.HasBacks)
        {
            return Unknown;
        }

        var hole = state.PlaceOf(PickHole.Of(holding.Used[front]!)).Z;
        return Sum.Of($"{plan.Name}, lowest edge below its hole", "d = u + Σ hᵢ · cos(bᵢ) + e", Statics.Equilibrium)
            .Put("u", facts.At(hole))
            .PutAll("hᵢ", state.Boxes.Select(box => facts.At(box.Box.PinToPin)))
            .PutAll("bᵢ", state.Boxes.Select(box => new Figure<Angle>(box.Tilt, facts.Doubts, Reason.Derived.It)))
            .Put("e", facts.At(state.Boxes[^1].LowerPin.Z - state.Lowest.Z))
            .Gives((up, pins, tilts, edge) => Length.FromMeters(up.Meters + pins.Values.Zip(tilts.Values, (pin, tilt) => pin.Meters * Math.Cos(tilt.Radians)).Sum() + edge.Meters));
    }

    private Figure<Length> Together(string formula, string symbol, Figure<Length> one, Func<Length, Length, Length> gives) =>
        Sum.Of(symbol == "b" ? $"{plan.Name}, its hole above the floor" : $"{plan.Name}, lowest edge above the floor", formula, Publication.Arithmetic).Put(symbol, one).Put("d", Drop).Gives(gives);
}

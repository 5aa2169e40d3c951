using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How each box of a hang is turned, and what the joint above it carries while it moves.</summary>
internal sealed class HangJoints(HangPlan plan, HangFacts facts, IReadOnlyList<CarriedLoad> boxes, double dynamic)
{
    private static readonly Figure<Force> NoForce = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>From the top.</summary>
    public IReadOnlyList<HangBoxPlan> Boxes() => [.. plan.Stack.Boxes.Select((box, index) => BoxOf(box, index))];

    private HangBoxPlan BoxOf(StackedBox box, int index)
    {
        var flying = box.Piece.Kind?.Loudspeaker?.Flying;
        var below = Sum.Of($"{box.Piece.Name}, on the joint above it", "w = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", boxes.Skip(index).Select(load => load.Weight))
            .Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
        var (rear, front) = ForcesOf(box, index, below);
        return new HangBoxPlan(box, facts.Splays[index], TiltOf(box, index), boxes[index].Weight, below, rear, front)
        {
            RearLimit = LimitOf(flying?.RearLimit),
            FrontLimit = LimitOf(flying?.FrontLimit),
            At = plan.State?.Boxes[index],
        };
    }

    private Figure<Angle> TiltOf(StackedBox box, int index) =>
        Sum.Of($"{box.Piece.Name}, looks down", "b = a + Σ sᵢ", Publication.Arithmetic)
            .Put("a", plan.Tilt)
            .PutAll("sᵢ", facts.Splays.Take(index + 1))
            .Gives((frame, splays) => Angle.FromDegrees(frame.Degrees + splays.Values.Sum(splay => splay.Degrees)));

    // About the front pin the link holds what hangs below; its line runs along what the box hangs on.
    private (Figure<Force> Rear, Figure<Force> Front) ForcesOf(StackedBox box, int index, Figure<Mass> below)
    {
        if (plan.State is not { } state || plan.Placed.Flown.PullBack is not null || state.Boxes[index].Box.LinkArm is not { } arm)
        {
            return (NoForce with { RestsOn = facts.Doubts }, NoForce with { RestsOn = facts.Doubts });
        }

        var centre = state.Boxes.Skip(index).Sum(one => one.Box.Weight * one.Centre.X) / state.Boxes.Skip(index).Sum(one => one.Box.Weight);
        var along = index == 0 ? state.Tilt : state.Boxes[index - 1].Tilt;
        var factor = Figure.Policy("dynamic-factor", dynamic);
        var rear = Sum.Of($"{box.Piece.Name}, rear link, moving", "P = φ · 9.80665 · w · e / c", Statics.Equilibrium)
            .Put("φ", factor)
            .Put("w", below)
            .Put("e", facts.At(state.Boxes[index].Pin.X - centre))
            .Put("c", facts.At(arm))
            .Gives((times, mass, back, from) => Force.FromNewtons(times * TrussStatics.Gravity * mass.Kilograms * back.Meters / from.Meters));
        var front = Sum.Of($"{box.Piece.Name}, front pins, moving", "F = √((P · sin(b))² + (φ · 9.80665 · w − P · cos(b))²)", Statics.Equilibrium)
            .Put("P", rear)
            .Put("b", new Figure<Angle>(along, facts.Doubts, Reason.Derived.It))
            .Put("φ", factor)
            .Put("w", below)
            .Gives((pull, tilt, times, mass) => Force.FromNewtons(Math.Sqrt(
                Math.Pow(pull.Newtons * Math.Sin(tilt.Radians), 2) + Math.Pow((times * TrussStatics.Gravity * mass.Kilograms) - (pull.Newtons * Math.Cos(tilt.Radians)), 2))));
        return (rear, front);
    }

    private static Figure<Force> LimitOf(Given<Force>? given) => given is { } limit ? Figure.From(limit) : NoForce;
}

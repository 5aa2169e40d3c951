using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How each box of a hang is turned, and what the joint above it carries while it moves.</summary>
internal sealed class HangJoints(HangPlan plan, HangFacts facts, HangHolding holding, IReadOnlyList<CarriedLoad> boxes, double dynamic)
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

    private (Figure<Force> Rear, Figure<Force> Front) ForcesOf(StackedBox box, int index, Figure<Mass> below)
    {
        if (plan.State is not { } state || state.Boxes[index].Box.LinkArm is null)
        {
            return (NoForce with { RestsOn = facts.Doubts }, NoForce with { RestsOn = facts.Doubts });
        }

        if (holding.Pull is not { } pull)
        {
            return Free(box.Piece.Name, "moving", state, index, below);
        }

        // It goes up before it is pulled back.
        var pulled = Pulled(box.Piece.Name, pull, state, index, below);
        var before = holding.LooseTilt is { } loose ? Free(box.Piece.Name, "moving, before it is pulled back", plan.Chain!.At(loose), index, below) : (Rear: NoForce, Front: NoForce);
        return (Harder(pulled.Rear, before.Rear), Harder(pulled.Front, before.Front));
    }

    // About the front pin the link holds what hangs below; its line runs along what the box hangs on.
    private (Figure<Force> Rear, Figure<Force> Front) Free(string name, string when, HangState state, int index, Figure<Mass> below)
    {
        var factor = Figure.Policy("dynamic-factor", dynamic);
        var rear = Sum.Of($"{name}, rear link, {when}", "P = φ · 9.80665 · w · e / c", Statics.Equilibrium)
            .Put("φ", factor)
            .Put("w", below)
            .Put("e", Behind(state, index))
            .Put("c", facts.At(state.Boxes[index].Box.LinkArm!.Value))
            .Gives((times, mass, back, from) => Force.FromNewtons(times * TrussStatics.Gravity * mass.Kilograms * back.Meters / from.Meters));
        var front = Sum.Of($"{name}, front pins, {when}", "F = √((P · sin(b))² + (φ · 9.80665 · w − P · cos(b))²)", Statics.Equilibrium)
            .Put("P", rear)
            .Put("b", Along(state, index))
            .Put("φ", factor)
            .Put("w", below)
            .Gives((pull, tilt, times, mass) => Force.FromNewtons(Math.Sqrt(
                Math.Pow(pull.Newtons * Math.Sin(tilt.Radians), 2) + Math.Pow((times * TrussStatics.Gravity * mass.Kilograms) - (pull.Newtons * Math.Cos(tilt.Radians)), 2))));
        return (rear, front);
    }

    // The same with the line that pulls at the lowest box, which is below every joint.
    private (Figure<Force> Rear, Figure<Force> Front) Pulled(string name, HangPull pull, HangState state, int index, Figure<Mass> below)
    {
        var (pin, at) = (state.Boxes[index].Pin, HangPull.At(state));
        var rear = Sum.Of($"{name}, rear link, pulled back, at rest", "r = (9.80665 · w · e + k) / c", Statics.Equilibrium)
            .Put("w", below)
            .Put("e", Behind(state, index))
            .Put("k", pull.Turns($"{name}, what the pull-back turns about its front pin", facts.At(at.X - pin.X), facts.At(at.Z - pin.Z)))
            .Put("c", facts.At(state.Boxes[index].Box.LinkArm!.Value))
            .Gives((mass, back, turned, from) => Force.FromNewtons(((TrussStatics.Gravity * mass.Kilograms * back.Meters) + turned.NewtonMeters) / from.Meters));
        var front = Sum.Of($"{name}, front pins, pulled back, at rest", "f = √((r · sin(b) − 9.80665 · h)² + (9.80665 · v − r · cos(b))²)", Statics.Equilibrium)
            .Put("r", rear)
            .Put("b", Along(state, index))
            .Put("h", pull.Back)
            .Put("v", pull.Left(name, below))
            .Gives((link, tilt, back, left) => Force.FromNewtons(Math.Sqrt(
                Math.Pow((link.Newtons * Math.Sin(tilt.Radians)) - (TrussStatics.Gravity * back.Kilograms), 2)
                + Math.Pow((TrussStatics.Gravity * left.Kilograms) - (link.Newtons * Math.Cos(tilt.Radians)), 2))));
        return (Moved($"{name}, rear link, moving, pulled back", rear), Moved($"{name}, front pins, moving, pulled back", front));
    }

    private Figure<Force> Moved(string name, Figure<Force> rest) =>
        Sum.Of(name, "F = φ · r", Publication.CommonPractice).Put("φ", Figure.Policy("dynamic-factor", dynamic)).Put("r", rest).Gives((times, force) => times * force);

    // How far the centre of gravity of all that hangs below a joint is behind its front pin.
    private Figure<Length> Behind(HangState state, int index) =>
        facts.At(state.Boxes[index].Pin.X - (state.Boxes.Skip(index).Sum(one => one.Box.Weight * one.Centre.X) / state.Boxes.Skip(index).Sum(one => one.Box.Weight)));

    private Figure<Angle> Along(HangState state, int index) => new(index == 0 ? state.Tilt : state.Boxes[index - 1].Tilt, facts.Doubts, Reason.Derived.It);

    private static Figure<Force> Harder(Figure<Force> one, Figure<Force> other)
    {
        var harder = one.Value is null || (other.Value is { } more && Math.Abs(more.Newtons) > Math.Abs(one.Value.Value.Newtons)) ? other : one;
        return harder with { Value = one.Value is null || other.Value is null ? null : harder.Value, RestsOn = one.RestsOn.With(other.RestsOn) };
    }

    private static Figure<Force> LimitOf(Given<Force>? given) => given is { } limit ? Figure.From(limit) : NoForce;
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What is known of a hang as its makers and the gig tell it: weights, places, splays; and what is not.</summary>
internal sealed class HangFacts
{
    private readonly List<string> missing = [];

    /// <param name="stack">Its boxes.</param>
    /// <param name="frame">The frame with what comes with it, what is fixed to it, and leads.</param>
    /// <param name="boxes">Its boxes with their joints, from the top.</param>
    public HangFacts(StackPlan stack, IReadOnlyList<CarriedLoad> frame, IReadOnlyList<CarriedLoad> boxes)
    {
        Frame = stack.Frame?.Piece.Kind?.FlyingFrame;
        Splays = SplaysOf(stack);
        Doubts = Turned(stack).With(Of(Frame?.CentreBehind)).With(Of(Frame?.CentreAbove));
        Look(stack, [.. frame, .. boxes]);
        Chain = missing.Count > 0 ? null : Make(stack, frame, boxes);
    }

    /// <summary>The frame's own facts; null where nobody knows them.</summary>
    public FlyingFrame? Frame { get; }

    /// <summary>Of each box, from the top.</summary>
    public IReadOnlyList<Figure<Angle>> Splays { get; }

    /// <summary>Null where something is missing.</summary>
    public HungChain? Chain { get; }

    /// <summary>The open questions behind every place of it.</summary>
    public Doubts Doubts { get; private set; }

    /// <summary>What is missing, in words.</summary>
    public IReadOnlyList<string> Missing => missing;

    /// <summary>Whether the depth of every box is known, so that its lowest edge is.</summary>
    public bool HasBacks { get; private set; }

    /// <summary>Whether the depth of the lowest one is known.</summary>
    public bool HasLowestBack { get; private set; }

    /// <summary>From now on every place of it is one at this tilt, and rests on what that rests on.</summary>
    public void TurnBy(Figure<Angle> tilt) => Doubts = Doubts.With(tilt.RestsOn);

    /// <summary>A place of it as a figure.</summary>
    public Figure<Length> At(double metres) => new(Length.FromMeters(metres), Doubts, Reason.Derived.It);

    private static Doubts Of<T>(Given<T>? given)
        where T : notnull => Doubts.Of(given?.Doubt);

    private static Doubts Turned(StackPlan stack)
    {
        var flown = stack.Stack.Flown!;
        var splays = flown.Splays.Is(out var said) ? said.Aggregate(Of<IReadOnlyList<Given<Angle>>>(flown.Splays), (sum, splay) => sum.With(Doubts.Of(splay.Doubt))) : Doubts.Of(flown.Splays.Doubt);
        return stack.Boxes.Select(box => box.Piece.Kind?.Loudspeaker?.Flying).OfType<Flying>()
            .Aggregate(splays, (sum, box) => sum.With(Doubts.Of(box.PinToPin.Doubt)).With(Of(box.CentreBehind)).With(Of(box.CentreBelow)).With(Of(box.Back)).With(Of(box.Front)).With(Of(box.LinkArm)));
    }

    private static IReadOnlyList<Figure<Angle>> SplaysOf(StackPlan stack)
    {
        var written = stack.Stack.Flown!.Splays;
        var unknown = new Figure<Angle>(null, Doubts.Of(written.Doubt), Reason.Derived.It);
        return written.Is(out var splays) && splays.Count == stack.Boxes.Count ? [.. splays.Select(Figure.From)] : [.. stack.Boxes.Select(_ => unknown)];
    }

    private void Look(StackPlan stack, IReadOnlyList<CarriedLoad> loads)
    {
        var written = stack.Stack.Flown!.Splays;
        Ask(stack.Boxes.Count > 0, "its boxes");
        Ask(stack.Frame is not null, "its frame");
        Ask(stack.Frame is null || Frame is not null, "what its frame is to its maker");
        Ask(Frame is null || (Frame.CentreBehind is { IsKnown: true } && Frame.CentreAbove is null or { IsKnown: true }), "the centre of gravity of its frame");
        Ask(!written.Is(out var splays) || splays.Count == stack.Boxes.Count, "one splay for each box");
        Ask(written.IsKnown && (!written.Is(out var each) || each.All(splay => splay.IsKnown)), "its splays");
        foreach (var kinds in stack.Boxes.GroupBy(box => box.Piece.Item, StringComparer.Ordinal))
        {
            var flying = kinds.First().Piece.Kind?.Loudspeaker?.Flying;
            Ask(flying is { PinToPin: { IsKnown: true, Value.Meters: > 0 } }, $"how far apart the pins of {kinds.Key} are");
            Ask(flying is null || flying is { CentreBehind.IsKnown: true, CentreBelow.IsKnown: true }, $"the centre of gravity of {kinds.Key}");
        }

        foreach (var load in loads.Where(load => load.Weight.Value is not { Kilograms: > 0 }).DistinctBy(load => load.What))
        {
            Ask(isKnown: false, $"what {load.What} weighs");
        }

        HasLowestBack = stack.Boxes.Count > 0 && stack.Boxes[^1].Piece.Kind?.Loudspeaker?.Flying?.Back is { IsKnown: true };
        HasBacks = stack.Boxes.All(box => box.Piece.Kind?.Loudspeaker?.Flying is { Back.IsKnown: true } flying && flying.Front is null or { IsKnown: true });
    }

    private void Ask(bool isKnown, string what)
    {
        if (!isKnown && !missing.Contains(what, StringComparer.Ordinal))
        {
            missing.Add(what);
        }
    }

    // What is fixed to the frame, and leads, are taken to hang at its centre of gravity.
    private HungChain Make(StackPlan stack, IReadOnlyList<CarriedLoad> frame, IReadOnlyList<CarriedLoad> boxes)
    {
        var (behind, above) = (Frame!.CentreBehind!.Value.Value.Meters, Frame.CentreAbove?.Value.Meters ?? 0);
        return new HungChain(
            [.. frame.Select(load => new HungMass(Newtons(load), -behind, -above))],
            [.. stack.Boxes.Select((box, index) => BoxOf(box.Piece.Kind!.Loudspeaker!.Flying!, Newtons(boxes[index]), Splays[index].Value!.Value))]);
    }

    private static HungBox BoxOf(Flying flying, double weight, Angle splay) =>
        new(weight, -flying.CentreBehind!.Value.Value.Meters, flying.CentreBelow!.Value.Value.Meters, flying.PinToPin.Value.Meters, splay)
        {
            Behind = flying.Back is { IsKnown: true } back ? back.Value.Meters : 0,
            Ahead = flying.Front is { IsKnown: true } front ? front.Value.Meters : 0,
            LinkArm = flying.LinkArm is { IsKnown: true, Value.Meters: > 0 } arm ? arm.Value.Meters : null,
        };

    private static double Newtons(CarriedLoad load) => load.Weight.Value!.Value.Kilograms * TrussStatics.Gravity;
}

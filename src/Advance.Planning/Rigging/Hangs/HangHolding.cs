using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>By which holes a hang is held, how it tilts on them, and where its centre of gravity is then.</summary>
internal sealed class HangHolding
{
    private static readonly Figure<Angle> NoAngle = new(null, Doubts.None, Reason.Derived.It);

    private readonly PlacedHang placed;
    private readonly HangFacts facts;
    private readonly IReadOnlyList<CarriedLoad> loads;
    private readonly List<string> missing = [];

    /// <param name="placed">What holds it.</param>
    /// <param name="facts">What is known of it.</param>
    /// <param name="loads">What hangs: frame and what hangs at its centre of gravity, then boxes.</param>
    /// <param name="weight">All of it.</param>
    public HangHolding(PlacedHang placed, HangFacts facts, IReadOnlyList<CarriedLoad> loads, Figure<Mass> weight)
    {
        (this.placed, this.facts, this.loads) = (placed, facts, loads);
        var pull = PullBackOf(placed, facts, weight);
        Pull = pull;
        Holes = facts.Frame is { } frame ? [.. frame.Holes.OrderBy(hole => hole.Behind.Or(Length.Zero).Meters).Select(hole => new HangHole(hole, FreeTilt(hole)))] : [];
        Used = [.. placed.Picks.Select((_, index) => HoleOf(index))];
        Look();
        Tilt = TiltOf();
        facts.TurnBy(Tilt);
        Centre = facts.Chain is { } chain && Tilt.Value is { } tilt ? CentreOf(chain.At(tilt), "x", "as it hangs").Ahead : new Figure<Length>(null, facts.Doubts, Reason.Derived.It);
    }

    /// <summary>The holes of its frame, from the front, each with the tilt that it gives alone.</summary>
    public IReadOnlyList<HangHole> Holes { get; }

    /// <summary>The hole of each pick, in the order written; null where nobody knows it.</summary>
    public IReadOnlyList<FrameHole?> Used { get; }

    /// <summary>Of the frame.</summary>
    public Figure<Angle> Tilt { get; }

    /// <summary>Of all that hangs, ahead of the front pin, as it hangs.</summary>
    public Figure<Length> Centre { get; }

    /// <summary>What pulls it back; null for nothing.</summary>
    public HangPull? Pull { get; }

    /// <summary>How its frame tilts before it is pulled back: as two picks hold it, as far as neither has to push; null where nobody knows.</summary>
    public Angle? LooseTilt
    {
        get
        {
            var ends = facts.Chain is { } chain && Used.All(hole => hole is not null && IsKnown(hole)) ? Used.Select(hole => chain.FreeTilt(PickHole.Of(hole!))?.Radians).ToList() : [];
            return Tilt.Value is not { } tilt || ends.Count == 0 || ends.Contains(null) ? null : Angle.FromRadians(Math.Clamp(tilt.Radians, ends.Min()!.Value, ends.Max()!.Value));
        }
    }

    /// <summary>What is missing, in words.</summary>
    public IReadOnlyList<string> Missing => missing;

    /// <summary>The open questions about a hole.</summary>
    public static Doubts RestsOn(FrameHole hole) => Doubts.Of(hole.Behind.Doubt).With(Doubts.Of(hole.Above.Doubt));

    /// <summary>The tilt on one pick: its centre of gravity comes under the hole.</summary>
    private Figure<Angle> FreeTilt(FrameHole hole)
    {
        if (facts.Chain is not { } chain || !IsKnown(hole) || chain.FreeTilt(PickHole.Of(hole)) is null)
        {
            return NoAngle with { RestsOn = facts.Doubts.With(RestsOn(hole)) };
        }

        var (ahead, up) = CentreOf(chain.At(Angle.Zero), "z", "with its frame level");
        var (place, high) = (Place(hole, -hole.Behind.Value.Meters), Place(hole, hole.Above.Value.Meters));
        return Pull?.FreeTilt(chain, $"{placed.Name}, tilt on hole {hole.Name}, pulled back", PickHole.Of(hole), (place, high), (ahead, up)) ?? Sum.Of($"{placed.Name}, tilt on hole {hole.Name}", "a = atan((x − p) / (u − z))", Statics.Equilibrium)
            .Put("x", ahead)
            .Put("p", place)
            .Put("u", high)
            .Put("z", up)
            .Gives((centre, pick, top, low) => Angle.FromRadians(Math.Atan((centre.Meters - pick.Meters) / (top.Meters - low.Meters))));
    }

    /// <summary>A length of a hole as a figure.</summary>
    public static Figure<Length> Place(FrameHole hole, double metres) => new(Length.FromMeters(metres), RestsOn(hole), Reason.Derived.It);

    private (Figure<Length> Ahead, Figure<Length> Up) CentreOf(HangState state, string symbol, string how)
    {
        var frame = facts.Chain!.Frame.Select(mass => default(SidePoint).Along(state.Tilt.Radians, mass.Forward, mass.Down));
        List<SidePoint> places = [.. frame, .. state.Boxes.Select(box => box.Centre)];
        return (Mean("x", "ahead of its front pin", place => place.X), symbol == "z" ? Mean("z", "above its front pin", place => place.Z) : facts.At(0));

        Figure<Length> Mean(string letter, string words, Func<SidePoint, double> of) =>
            Sum.Of($"{placed.Name}, centre of gravity {words}, {how}", $"{letter} = Σ wⱼ · {letter}ⱼ / Σ wⱼ", Statics.Equilibrium)
                .PutAll("wⱼ", loads.Select(load => load.Weight))
                .PutAll($"{letter}ⱼ", places.Select(place => facts.At(of(place))))
                .Gives((weights, at) => Length.FromMeters(weights.Values.Zip(at.Values, (one, place) => one.Kilograms * place.Meters).Sum() / weights.Values.Sum(one => one.Kilograms)));
    }

    private static bool IsKnown(FrameHole hole) => hole.Behind.IsKnown && hole.Above.IsKnown;

    private FrameHole? HoleOf(int pick)
    {
        if (placed.Written(pick).Hole is { } said)
        {
            return said.Is(out var name) ? Holes.Select(hole => hole.Hole).FirstOrDefault(hole => string.Equals(hole.Name, name, StringComparison.OrdinalIgnoreCase)) : null;
        }

        return placed.Picks.Count == 1 && placed.Flown.Tilt is { IsKnown: true } wanted
            ? Holes.Where(hole => hole.Tilt.Value is not null).MinBy(hole => Math.Abs(hole.Tilt.Value!.Value.Radians - wanted.Value.Radians))?.Hole
            : null;
    }

    private void Look()
    {
        if (placed.Picks.Count is 0 or > 2)
        {
            missing.Add(placed.Picks.Count == 0 ? "where it is held" : "how more than two picks share it");
        }

        for (var index = 0; index < Used.Count; index++)
        {
            if (Used[index] is null)
            {
                missing.Add(placed.Written(index).Hole is { IsKnown: true } said ? $"where hole {said.Value} of its frame is" : $"by which hole {placed.Picks[index].Name} holds it");
            }
            else if (!IsKnown(Used[index]!))
            {
                missing.Add($"where hole {Used[index]!.Name} of its frame is");
            }
        }

        if (placed.Picks.Count == 2 && placed.Flown.Tilt is not { IsKnown: true })
        {
            missing.Add("its tilt");
        }

        if (Used is [{ } one, { } other] && IsKnown(one) && IsKnown(other) && Math.Abs(one.Behind.Value.Meters - other.Behind.Value.Meters) < HungBeam.LeastApart)
        {
            missing.Add("two holes one behind the other");
        }

        if (Pull?.Missing is { } unknown)
        {
            missing.Add(unknown);
        }
    }

    private Figure<Angle> TiltOf() => placed.Picks.Count == 1 && Used[0] is { } hole
        ? Holes.First(one => one.Hole == hole).Tilt
        : placed.Flown.Tilt is { } given ? Figure.From(given) : NoAngle;

    private static HangPull? PullBackOf(PlacedHang placed, HangFacts facts, Figure<Mass> weight) =>
        placed.Flown.PullBack is { } pull ? new HangPull(placed.Name, pull, facts, weight) : null;
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Places;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One narrow place of the way in: an opening, and perhaps a corner behind it. What was not said is no hindrance.</summary>
/// <param name="step">As written.</param>
/// <param name="clearance">Kept all round what is turned.</param>
internal sealed class Threshold(AccessStep step, Length clearance)
{
    private const double Slack = 1e-9;
    private const double SquareCorner = 90;

    /// <summary>Whether anything about it could keep something out.</summary>
    public bool IsNarrow => step is not { Wide: null, High: null, Load: null, Turn: null };

    /// <summary>The open questions about it.</summary>
    public Doubts RestsOn => Doubts.Of(step.Wide?.Doubt).With(Doubts.Of(step.High?.Doubt)).With(Doubts.Of(step.Long?.Doubt))
        .With(Doubts.Of(step.Load?.Doubt)).With(Doubts.Of(step.Turn?.Doubt));

    /// <summary>Whether something comes through, laid in one of some ways.</summary>
    public (Verdict Verdict, Hindrance What) Judge(IReadOnlyCollection<Bulk> ways)
    {
        var straight = Best(ways, Opening);
        if (straight != Verdict.Holds)
        {
            return (straight, Hindrance.Opening);
        }

        var round = Best(ways.Where(way => Opening(way) != Verdict.Fails), Round);
        return (round, round == Verdict.Holds ? Hindrance.None : Hindrance.Corner);
    }

    /// <summary>Whether it carries so much; unknown weights on an unlimited floor hold.</summary>
    public Verdict Carries(Figure<Mass> gross) => step.Load is { } load ? gross.AtMost(Figure.From(load)) : Verdict.Holds;

    /// <summary>How long something as wide as this may be to go round; null where the way goes straight on or is not known.</summary>
    /// <param name="way">What it takes up, as it goes.</param>
    /// <param name="size">Where that was written.</param>
    public Figure<Length>? Longest(Bulk way, Given<Size>? size)
    {
        var grown = Sum.Of("width with clearance", "w = s + 2 · c", Publication.CommonPractice)
            .Put("s", new Figure<Length>(Length.FromMeters(way.Short), Doubts.Of(size?.Doubt), new Reason.Fixed(size?.At ?? Mark.Nowhere)))
            .Put("c", Figure.Policy("corner-clearance", clearance))
            .Gives((side, gap) => side + (gap * 2));
        if (step.Turn is null || !Known(step.Wide, out var wayIn) || !Known(step.Long, out var wayOut) || grown.Value!.Value.Meters >= Math.Min(wayIn, wayOut))
        {
            return null;
        }

        var tightest = Angle.FromRadians(Corner.Tightest(wayIn, wayOut, grown.Value.Value.Meters));
        return Sum.Of("longest that goes round", "L = (a · sin θ + b · cos θ - w) / (sin θ · cos θ)", Publication.Arithmetic)
            .Put("a", Figure.From(step.Wide!.Value))
            .Put("b", Figure.From(step.Long!.Value))
            .Put("w", grown)
            .Put("θ", new Figure<Angle>(tightest, Doubts.None, Reason.Derived.It))
            .Gives((a, b, w, angle) => Length.FromMeters(Corner.Room(a.Meters, b.Meters, w.Meters, angle.Radians)));
    }

    private static Verdict Best(IEnumerable<Bulk> ways, Func<Bulk, Verdict> judge)
    {
        var verdicts = ways.Select(judge).ToList();
        return verdicts.Contains(Verdict.Holds) ? Verdict.Holds : verdicts.Contains(Verdict.CannotBeJudged) ? Verdict.CannotBeJudged : Verdict.Fails;
    }

    private Verdict Opening(Bulk way)
    {
        var (wide, high) = (Fits(step.Wide, way.Short), Fits(step.High, way.Height));
        return wide == Verdict.Fails || high == Verdict.Fails ? Verdict.Fails : wide == Verdict.Holds && high == Verdict.Holds ? Verdict.Holds : Verdict.CannotBeJudged;
    }

    private Verdict Round(Bulk way)
    {
        if (step.Turn is not { } turn)
        {
            return Verdict.Holds;
        }

        if (!turn.Is(out var angle) || Math.Abs(angle.Degrees) > SquareCorner + Slack || !Known(step.Wide, out var wayIn) || !Known(step.Long, out var wayOut))
        {
            return Verdict.CannotBeJudged;
        }

        var gap = 2 * clearance.Meters;
        return Corner.Passes(wayIn, wayOut, way.Long + gap, way.Short + gap) ? Verdict.Holds : Verdict.Fails;
    }

    private static Verdict Fits(Given<Length>? clear, double side) =>
        clear is not { } given ? Verdict.Holds : !given.Is(out var most) ? Verdict.CannotBeJudged : side <= most.Meters + Slack ? Verdict.Holds : Verdict.Fails;

    private static bool Known(Given<Length>? given, out double metres)
    {
        var known = given is { IsKnown: true } there ? there.Value : Length.Zero;
        metres = known.Meters;
        return metres > 0;
    }
}

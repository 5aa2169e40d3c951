using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/hang-too-long</c></summary>
internal sealed class HangTooLong : Rule<HangTooLong.Case>
{
    public override string Name => "rigging/hang-too-long";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A hang comes lower than it may, down to what is under it, or is as long as its point is high.";

    public override string Why => "It does not get to its trim, stands on its lowest box, or hangs before what is to be seen.";

    public override string Cures => "Fewer boxes, another trim, or higher points.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.Bottom.Value is not null
        from limit in Limits(plan, hang)
        select limit;

    protected override Said Say(Case found) => found.IsRoof
        ? new($"{found.Hang.Stack.Stack.Name}: its hole would be {found.Of.Value!.Value} above the floor, and {found.What} is at {found.Limit.Value!.Value}.", "A lower trim, fewer boxes, or higher points.", $"{found.Of.Value!.Value} of {found.Limit.Value!.Value}")
        : new($"{found.Hang.Stack.Stack.Name} comes down to {found.Of.Value!.Value} above the floor, and {found.What} is {found.Limit.Value!.Value}.", "Fewer boxes, or a higher trim.", $"{found.Of.Value!.Value} of {found.Limit.Value!.Value}");

    private static IEnumerable<Case> Limits(Plan plan, HangPlan hang)
    {
        if (hang.Stack.Under.Value is not null)
        {
            yield return new Case(hang, hang.Bottom, hang.Stack.Under, hang.Stack.On == Footing.Deck ? "the deck" : "the floor", IsRoof: false, "under", IsMoreThan(hang.Bottom, hang.Stack.Under));
        }

        if (hang.StaysAbove is { } least)
        {
            yield return new Case(hang, hang.Bottom, least, "what it is to stay above", IsRoof: false, "stays-above", hang.Bottom.AtLeast(least));
        }

        // The point with the least room above its hole stands for all.
        var tightest = hang.Picks.Select(pick => (Pick: pick, Point: plan.Rigging.PointOf(pick.Pick))).Where(one => one.Pick.Height.Value is not null && one.Point is { Height.IsKnown: true })
            .OrderBy(one => one.Point!.Height.Value.Meters - one.Pick.Height.Value!.Value.Meters).FirstOrDefault();
        if (tightest.Point is { } point)
        {
            var steel = Figure.From(point.Height);
            yield return new Case(hang, tightest.Pick.Height, steel, point.Name, IsRoof: true, "roof", IsMoreThan(steel, tightest.Pick.Height));
        }
    }

    private static Verdict IsMoreThan(Figure<Length> more, Figure<Length> less) => more.Value is not { } one || less.Value is not { } other ? Verdict.CannotBeJudged
        : one.Meters > other.Meters ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(HangPlan Hang, Figure<Length> Of, Figure<Length> Limit, string What, bool IsRoof, string Which, Verdict Is)
        : Judgement(Hang.Written / Which / What, Hang.Placed.Hang.At, Is, Of.RestsOn.With(Limit.RestsOn));
}

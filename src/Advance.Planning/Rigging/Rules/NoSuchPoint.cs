using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/no-such-point</c></summary>
internal sealed class NoSuchPoint : Rule<NoSuchPoint.Case>
{
    public override string Name => "rigging/no-such-point";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A pick or a bridle hangs on a point that the venue has not, or something is hung on a truss that there is not.";

    public override string Why => "Nobody adds its load to anything.";

    public override string Cures => "Write the venue's name for the point, or the truss's.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var (gig, isTold) = (plan.Brief.Gig.Rigging, plan.Brief.Venue.RoofPoints.IsKnown);
        var points = (plan.Brief.Venue.RoofPoints.Is(out var known) ? known.Select(point => point.Name) : []).ToList();
        var trusses = gig.Trusses.Select(truss => truss.Name).ToList();
        var names = points.Concat(gig.Bridles.Select(bridle => bridle.Name)).ToList();
        return
        [
            .. from truss in plan.Rigging.Trusses
               from pick in truss.Picks
               where isTold && pick.Placed.Pick.Point.IsKnown
               select new Case(pick.Name, pick.Placed.Pick.Point.Value, names, pick.Address / "on", pick.Placed.Pick.At),
            .. from hang in plan.Rigging.Hangs
               from pick in hang.Picks
               where isTold && pick.Pick.Placed.Pick.Point.IsKnown
               select new Case(pick.Pick.Name, pick.Pick.Placed.Pick.Point.Value, [.. names, .. trusses], pick.Pick.Address / "on", pick.Pick.Placed.Pick.At),
            .. from bridle in gig.Bridles
               where isTold
               from point in bridle.Points
               select new Case($"bridle {bridle.Name}", point, points, Address.Of("rigging") / "bridle" / bridle.Name / "on" / point, bridle.At),
            .. from load in gig.Dressing select new Case(load.What, load.Truss, trusses, Address.Of("rigging") / "load" / load.What / load.Truss, load.At),
        ];
    }

    protected override Said Say(Case found) => new(
        $"{found.What} hangs on {found.On}, and there is none of that name.",
        found.Nearest is { } nearest ? Words.Of($"Did you mean {nearest}?") : Words.FromString("Write it as the venue or the gig names it."),
        $"{found.On}");

    internal sealed record Case(string What, string On, IReadOnlyList<string> Names, Address Place, Mark Written)
        : Judgement(Place, Written, Names.Contains(On, StringComparer.OrdinalIgnoreCase) ? Verdict.Holds : Verdict.Fails, Doubts.None)
    {
        /// <summary>The name that it looks like; null where it looks like none.</summary>
        public string? Nearest => Domain.Naming.Nearest.To(On, Names);
    }
}

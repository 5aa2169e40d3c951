using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How long a lead must be, and how leads are put together.</summary>
internal static class CablePoliciesShape
{
    private static readonly CablePolicies Usual = CablePolicies.Default;

    public static readonly RecordShape<CablePolicies> It = new("cable-policies", "How long leads must be, and how they are put together.", keys =>
    {
        var slack = keys.Percent("slack", Usual.Slack, "More than the path, because a lead does not lie straight.");
        var climb = keys.Metres("climb", Usual.Climb, "Least for the edge of a deck; a higher deck counts with its height.");
        var ramp = keys.Metres("ramp", Usual.Ramp, "For each ramp or bridge that a lead goes up and over on.");
        var dropFloor = keys.Metres("drop-floor", Usual.DropFloor, "Along the floor below what hangs, on top of how high it hangs.");
        var dropTruss = keys.Metres("drop-truss", Usual.DropTruss, "At a connector that hangs.");
        var near = keys.Metres("near", Usual.Near, "What is not further is joined straight, and a way is reached straight.");
        var trims = keys.Defaulted("trims", CableTrimsShape.It, Usual.Trims, "Left at the ends.", "common practice");
        var joins = keys.Defaulted("joins", CableJoinsShape.It, Usual.Joins, "The most joins in one run.", "common practice");
        var surplusShare = keys.Percent("surplus-share", Usual.SurplusShare, "Left over beyond this share of what is needed is worth a note, where it is also longer than surplus-length.");
        var surplusLength = keys.Metres("surplus-length", Usual.SurplusLength, "Left over beyond this length is worth a note, where it is also more than surplus-share.");
        var loomRuns = keys.Defaulted("loom-runs", Written.Between("loom-runs", 2, 100), Usual.LoomRuns, "So many runs that share enough of their way are a loom.", "4");
        var loomShare = keys.Percent("loom-share", Usual.LoomShare, "Runs that share so much of their way may be a loom.");
        return row => new CablePolicies
        {
            Slack = slack(row),
            Climb = climb(row),
            Ramp = ramp(row),
            DropFloor = dropFloor(row),
            DropTruss = dropTruss(row),
            Near = near(row),
            Trims = trims(row),
            Joins = joins(row),
            SurplusShare = surplusShare(row),
            SurplusLength = surplusLength(row),
            LoomRuns = loomRuns(row),
            LoomShare = loomShare(row),
        };
    });
}

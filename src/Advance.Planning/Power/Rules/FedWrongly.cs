using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/fed-wrongly</c></summary>
internal sealed class FedWrongly : Rule<FedWrongly.Case>
{
    public override string Name => "power/fed-wrongly";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Nobody can tell how a distribution is fed: from nothing that is described, from two places, from itself, or by a connector that does not fit.";

    public override string Why => "Two feeds on one inlet make the second plug live; a loop feeds nothing; and what does not fit is forced.";

    public override string Cures => "Say fed-by once, with a service or an outlet that exists and fits.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var faults = plan.Power.Faults.ToLookup(fault => fault.Device);
        return plan.Power.Distributions.SelectMany(point => faults[point.Device!].Select(fault => new Case(point, fault)).DefaultIfEmpty(new Case(point, null)));
    }

    protected override Said Say(Case found) => new($"{found.Point.Name} is {found.Fault!.Says}.", "Say fed-by once, with a service or an outlet that exists and fits.", $"{found.Fault.Says}");

    private static Verdict Judge(FeedFault? fault) => fault?.Kind switch
    {
        null => Verdict.Holds,
        FeedFaultKind.Open => Verdict.CannotBeJudged,
        _ => Verdict.Fails,
    };

    internal sealed record Case(SupplyPoint Point, FeedFault? Fault)
        : Judgement(Point.Address / "feed", Point.At, Judge(Fault), Fault?.RestsOn ?? Domain.Facts.Doubts.None);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>sound/software-differs</c></summary>
internal sealed class SoftwareDiffers : Rule<SoftwareDiffers.Case>
{
    public override string Name => "sound/software-differs";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A unit was found to run another version of its software than the stock expects.";

    public override string Why => "Boxes of one kind on two versions may be set alike and sound different.";

    public override string Cures => "Load the version that is expected, or write the one that all of them run into the stock.";

    public override Publication Source => Publication.CommonPractice;

    // There is something to compare only where somebody looked: a row in measured, at the unit's address and /software.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from unit in plan.Drive.Units
        where unit.Software.Length > 0
        from row in plan.Brief.Gig.Measured
        where row.Where == (unit.Address / "software").Text
        select new Case(unit, row);

    protected override Said Say(Case found) => new(
        $"{found.Unit.Name}: software {found.Row.Value} found, {found.Unit.Software} expected.",
        "Load the version that is expected.",
        $"{found.Row.Value}, {found.Unit.Software}");

    internal sealed record Case(NetworkUnit Unit, Measurement Row)
        : Judgement(Unit.Address / "software", Row.At, Row.Value == Unit.Software ? Verdict.Holds : Verdict.Fails, Doubts.None);
}

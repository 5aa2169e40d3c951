using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>gig/measured-differs</c></summary>
internal sealed class MeasuredDiffers : Rule<MeasuredDiffers.Case>
{
    // Readings on site scatter about so much round a sum that is right.
    private const double Allowed = 0.15;

    public override string Name => "gig/measured-differs";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A reading from the site is more than 15 % off what was worked out, or belongs to no figure of the plan.";

    public override string Why => "Either the meter was on the wrong thing or the sum rests on something that is not so; both are found now or later.";

    public override string Cures => "Measure again; where the reading stands, put right what the figure rests on (advance explain shows it).";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var figures = plan.Figures.ToLookup(stated => stated.Address);
        var versions = plan.Drive.Units.Select(unit => unit.Address / "software").ToHashSet();
        return plan.Brief.Gig.Measured.Where(row => !versions.Contains(Address.Read(row.Where))).Select(row => CaseOf(row, figures[Address.Read(row.Where)].FirstOrDefault()));
    }

    protected override Said Say(Case found) => found switch
    {
        { Stated: null } => new(
            $"{found.Row.Where}: {Read(found)} was measured, and the plan has no such figure.",
            "Copy the address from the sheet, or from advance explain.",
            $"{Read(found)}"),
        { Verdict: Verdict.CannotBeJudged } => new(
            $"{found.Row.Where}: {Read(found)} was measured, and what it should be cannot be worked out or is of another kind.",
            "Measure in the unit of the figure, and answer what it rests on.",
            $"{Read(found)}"),
        _ => new(
            $"{found.Row.Where}: {Read(found)} was measured against {found.Stated.Value!} worked out, more than 15 % apart.",
            "Measure again; where the reading stands, put right what the figure rests on.",
            $"{Read(found)} against {found.Stated.Value!}"),
    };

    private static Words Read(Case found) => found.Row.Quantity is { } quantity ? Words.Of($"{(object)quantity}") : found.Row.Value;

    private static Case CaseOf(Measurement row, Stated? stated) => new(row, stated, stated is null ? Verdict.Fails : Compare(row.Quantity, stated.Value));

    private static Verdict Compare(IQuantity? read, object? stated)
    {
        if (read is null || stated is not IQuantity expected || expected.QuantityInfo.Name != read.QuantityInfo.Name)
        {
            return Verdict.CannotBeJudged;
        }

        var unit = expected.QuantityInfo.BaseUnitInfo.Value;
        var (wanted, got) = (expected.As(unit), read.As(unit));
        return Math.Abs(got - wanted) <= Allowed * Math.Abs(wanted) ? Verdict.Holds : Verdict.Fails;
    }

    internal sealed record Case(Measurement Row, Stated? Stated, Verdict Verdict)
        : Judgement(Address.Read(Row.Where), Row.At, Verdict, Stated?.RestsOn ?? Doubts.None);
}

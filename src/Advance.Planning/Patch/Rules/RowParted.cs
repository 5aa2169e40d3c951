using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/row-parted</c></summary>
internal sealed class RowParted : Rule<RowParted.Case>
{
    public override string Name => "patch/row-parted";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Channels or mixes that are patched together are not on ports side by side: no box had as many free in a row.";

    public override string Why => "A pair is looked for side by side, and a multi-way tail reaches no further.";

    public override string Cures => "Fix other lines elsewhere so that ports in a row come free, or bring a larger box.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        CasesOf(plan.Patch.Lines.Select(line => new PatchedRow(line))).Concat(CasesOf(plan.Patch.Returns.Select(mix => new PatchedRow(mix))));

    protected override Said Say(Case found) => new(
        $"{found.Row.Words} is on {found.Row.Port!.ToString()}, and the one before it on {found.Before.ToString()}.",
        "Fix other lines elsewhere so that ports in a row come free, or bring a larger box.",
        $"{found.Before.ToString()}, {found.Row.Port!.ToString()}");

    private static IEnumerable<Case> CasesOf(IEnumerable<PatchedRow> all)
    {
        PatchedRow? last = null;
        foreach (var row in all)
        {
            if (row is { Index: > 0, Port: { } port } && last?.Port is { } before)
            {
                yield return new Case(row, before, port.Device == before.Device && port.Number == before.Number + 1 ? Verdict.Holds : Verdict.Fails);
            }

            last = row;
        }
    }

    internal sealed record Case(PatchedRow Row, Port Before, Verdict Verdict)
        : Judgement(Row.Address, Row.At, Verdict, Doubts.None);
}

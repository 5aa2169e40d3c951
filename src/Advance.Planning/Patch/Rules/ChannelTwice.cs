using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/channel-twice</c></summary>
internal sealed class ChannelTwice : Rule<ChannelTwice.Case>
{
    public override string Name => "patch/channel-twice";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Two lines that are up at the same time have the same channel of the desk, or two mixes of an act the same number.";

    public override string Why => "Only one of them is heard, and which one is settled by whoever patches last.";

    public override string Cures => "Give one of them a free number.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var lines = plan.Patch.Lines.Select(line => (line.Act, Row: new PatchedRow(line))).ToList();
        var mixes = plan.Patch.Returns.Select(mix => ((string?)mix.Act, Row: new PatchedRow(mix))).ToList();
        return CasesOf(lines).Concat(CasesOf(mixes));
    }

    protected override Said Say(Case found) => new(
        $"{found.Row.Words} has the same number as {found.Other!.Words}.",
        "Give one of them a free number.",
        $"{found.Row.Number} twice");

    private static IEnumerable<Case> CasesOf(IReadOnlyList<(string? Act, PatchedRow Row)> all)
    {
        for (var index = 0; index < all.Count; index++)
        {
            var (act, row) = all[index];
            var other = all.Take(index).FirstOrDefault(one => one.Row.Number == row.Number && (act is null || one.Act is null || one.Act == act)).Row;
            yield return new Case(row, other, other is null ? Verdict.Holds : Verdict.Fails);
        }
    }

    internal sealed record Case(PatchedRow Row, PatchedRow? Other, Verdict Verdict)
        : Judgement(Row.Address, Row.At, Verdict, Doubts.None);
}

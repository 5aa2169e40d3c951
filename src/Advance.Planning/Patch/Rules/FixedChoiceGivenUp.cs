using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/fixed-choice-given-up</c></summary>
internal sealed class FixedChoiceGivenUp : Rule<FixedChoiceGivenUp.Case>
{
    public override string Name => "patch/fixed-choice-given-up";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A line or a mix is not on the port that was fixed by hand: the port does not exist, or two things cannot both have it.";

    public override string Why => "Whoever fixed it plugs in there, and the desk listens elsewhere.";

    public override string Cures => "Fix a free port, or leave it out and let one be chosen.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var boxes = new PatchBoxes(plan.Brief.Gig, plan.Brief.Stock, plan.Sound);
        var lines = plan.Patch.Lines.Select(line => (line.Act, Spoken: new PatchedRow(line))).ToList();
        var mixes = plan.Patch.Returns.Select(mix => ((string?)mix.Act, Spoken: new PatchedRow(mix))).ToList();
        return CasesOf(lines, boxes).Concat(CasesOf(mixes, boxes));
    }

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.Row.Words} is fixed to {found.Fixed}, and nobody knows whether {found.Wanted.Device} has that port.",
            $"Give {found.Wanted.Device} an item whose ports the stock knows.",
            $"{found.Fixed}, ports unknown")
        : new(
            $"{found.Row.Words} is on {found.Row.Port!.ToString()}, not on {found.Fixed} as fixed by hand: {found.Cause}.",
            "Fix a free port, or leave it out and let one be chosen.",
            $"{found.Fixed}, given {found.Row.Port!.ToString()}");

    // Several channels of one row are fixed once.
    private static IEnumerable<Case> CasesOf(IReadOnlyList<(string? Act, PatchedRow Spoken)> all, PatchBoxes boxes)
    {
        foreach (var (act, row) in all.Where(one => one.Spoken is { Index: 0, Port: not null, Fixed: not null }))
        {
            var wanted = row.Wanted!;
            var cause = row.Port!.IsIn(row.Fixed!, 0) ? "" : Cause(row, wanted, boxes, all.Where(one => act is null || one.Act is null || one.Act == act).Select(one => one.Spoken));
            var isKnown = boxes.Count(row.Port!) is not null;
            yield return new Case(row, wanted, cause, cause.Length > 0 ? Verdict.Fails : isKnown ? Verdict.Holds : Verdict.CannotBeJudged);
        }
    }

    private static string Cause(PatchedRow row, Port wanted, PatchBoxes boxes, IEnumerable<PatchedRow> live)
    {
        if (boxes.Find(wanted.Device) is null)
        {
            return $"{wanted.Device} is no stage box or desk of this gig";
        }

        if (row.Fixed!.Kind is { } kind && kind != row.Port!.Kind)
        {
            return "that is not a port for it";
        }

        if (wanted.Number > boxes.Count(wanted))
        {
            return $"{wanted.Device} has {boxes.Count(wanted)}";
        }

        var other = live.FirstOrDefault(other => other.Port == wanted && other.Words != row.Words);
        return boxes.Reserved(wanted.Kind).Contains(wanted) ? "other gear hangs on it all day" : other is not null ? $"{other.Words} has it" : "it does not fit there";
    }

    internal sealed record Case(PatchedRow Row, Port Wanted, string Cause, Verdict Verdict)
        : Judgement(Row.Address, Row.At, Verdict, Row.RestsOn)
    {
        public string Fixed => Wanted.Number is null ? Wanted.Device : Wanted.ToString();
    }
}

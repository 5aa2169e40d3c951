using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>access/unpack-outside</c></summary>
internal sealed class UnpackOutside : Rule<UnpackOutside.Case>
{
    public override string Name => "access/unpack-outside";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A case, cart or rack does not come through a door, round a corner or onto a lift on the way in; what is in it does, singly.";

    public override string Why => "Whoever pushes it first blocks the way for everybody behind, and carrying takes hands and time that nobody planned.";

    public override string Cures => "Empty it outside and carry what is in it, or find another way in.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Load.Passages.Where(passage => passage.IsCase).GroupBy(passage => passage.Item, StringComparer.Ordinal).Select(OfItem);

    protected override Said Say(Case found) => new(
        $"{found.Passage.Count} x {found.Passage.Item} does not {Through(found.Passage)}.",
        "Empty it outside, and carry in by hand what is in it.",
        AccessWords.Size(found.Passage));

    private static Case OfItem(IEnumerable<Passage> ofItem)
    {
        var passages = ofItem.ToList();
        var failed = passages.Find(passage => passage.Verdict == Verdict.Fails);
        var isCured = failed is { Stuck.Count: 0 } && passages.TrueForAll(passage => passage.Stuck.Count == 0);
        return new Case(failed ?? passages[0], isCured ? Verdict.Fails : Verdict.Holds);
    }

    private static Words Through(Passage passage) => passage.Hindrance switch
    {
        Hindrance.Load => $"go onto the {passage.Step.What}: it is too heavy",
        Hindrance.Corner => $"go round the {passage.Step.What}: {AccessWords.Size(passage)}, {AccessWords.Corner(passage)}",
        _ => $"come through the {passage.Step.What}: {AccessWords.Size(passage)}, {AccessWords.Opening(passage.Step)}",
    };

    internal sealed record Case(Passage Passage, Verdict Verdict) : Judgement(Passage.Address, Passage.Step.At, Verdict, Passage.RestsOn);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/not-judged</c></summary>
internal sealed class NotJudged : Rule<NotJudged.Case>
{
    public override string Name => "rigging/not-judged";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Something is unknown without which nobody can say what the hoists of a truss or a hang, or the legs of a bridle, carry.";

    public override string Why => "What is not worked out is not safe: it is only not worked out.";

    public override string Cures => "Answer what it asks for.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. plan.Rigging.Trusses.Where(truss => truss.IsInside != false).Select(truss => new Case(truss.Address / "judged", truss.Placed.Truss.At, Judge(truss), truss.RestsOn, truss, null)),
        .. plan.Rigging.Bridles.Select(bridle => new Case(bridle.Address / "judged", bridle.Bridle.At, bridle.Legs.Count > 0 ? Verdict.Holds : Verdict.CannotBeJudged, Doubts.None, null, bridle)),
        .. plan.Rigging.Hangs.Select(hang => new Case(hang.Written / "judged", hang.Placed.Hang.At, hang.State is not null ? Verdict.Holds : Verdict.CannotBeJudged, hang.RestsOn, null, null) { Hang = hang }),
    ];

    protected override Said Say(Case found) => found.Hang is { } hang
        ? new($"{hang.Stack.Stack.Name}: how it hangs cannot be worked out; not known: {string.Join(", ", MissingOf(hang))}.", "Write that.", $"{string.Join(", ", MissingOf(hang))}")
        : found.Truss is { } truss
        ? new($"{truss.Name}: what its hoists carry cannot be worked out: {TrussGaps.Of(truss)}.", "Write that.", TrussGaps.Of(truss))
        : found.Bridle!.Placed.Lost is { } pick
        ? new($"Bridle {found.Bridle.Name}: its hook is wanted under {pick}, and nobody knows where that is.", "Write its place; of a hang on two picks its tilt, and by which holes of which frame it hangs.", $"unknown")
        : new($"Bridle {found.Bridle!.Name}: how its legs lie cannot be worked out from its points and legs.", "Write places and heights of its points, and legs that meet, or its drop.", $"unknown");

    private static IReadOnlyList<string> MissingOf(HangPlan hang) => hang.Missing.Count > 0 ? hang.Missing : ["how it tilts"];

    private static Verdict Judge(TrussPlan truss) => truss.Study is not null ? Verdict.Holds : Verdict.CannotBeJudged;

    internal sealed record Case(Address Of, Mark Written, Verdict Is, Doubts Open, TrussPlan? Truss, BridlePlan? Bridle) : Judgement(Of, Written, Is, Open)
    {
        public HangPlan? Hang { get; init; }
    }
}

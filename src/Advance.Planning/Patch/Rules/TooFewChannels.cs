using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/too-few-channels</c></summary>
internal sealed class TooFewChannels : Rule<TooFewChannels.Case>
{
    public override string Name => "patch/too-few-channels";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "An input list counts further than a desk has channels.";

    public override string Why => "What is beyond the last channel cannot be mixed, and is found when the show file is made.";

    public override string Cures => "Bring a larger desk, or number the lines within its channels.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Patch.Lines.Count == 0 ? [] : plan.Patch.Desks.Select(desk => new Case(desk, desk.TopChannel.AtMost(desk.Channels)));

    protected override Said Say(Case found)
    {
        var (desk, top) = (found.Desk.Desk, found.Desk.TopChannel.Value ?? 0);
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"{desk}: the lists count up to channel {top}, and nobody knows how many channels it has.",
                "Write channels for its kind in the stock.",
                $"channel {top}, channels unknown")
            : new(
                $"{desk}: the lists count up to channel {top}, and it has {found.Desk.Channels.Value ?? 0}.",
                "Bring a larger desk, or number the lines within its channels.",
                $"channel {top} of {found.Desk.Channels.Value ?? 0}");
    }

    internal sealed record Case(DeskUse Desk, Verdict Verdict)
        : Judgement(Desk.Address, Desk.At, Verdict, Desk.Channels.RestsOn);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>schedule/sound-in-quiet-hours</c></summary>
internal sealed class SoundInQuietHours : Rule<SoundInQuietHours.Case>
{
    public override string Name => "schedule/sound-in-quiet-hours";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A sound check or a set falls into hours that the venue or the occasion wants quiet.";

    public override string Why => "Somebody pulls the plug, or the licence, and it is the act that stands in silence.";

    public override string Cures => "Move it, shorten it, or ask whoever wants it quiet.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var soundings = Sounding.Of(plan.Brief.Gig, (int)plan.Brief.Company.Policies.Tasks.SoundCheck.Time.Minutes);
        return new[] { plan.Brief.Gig.Quiet, plan.Brief.Venue.Rules.Quiet }.SelectMany(quiet => quiet is { } given ? Against(given, soundings) : []);
    }

    protected override Said Say(Case found) => found.Quiet is { } quiet
        ? new(
            $"{found.Sounding.What}, {found.Sounding.Time}, in the quiet hours {quiet}.",
            Cures,
            $"{found.Sounding.Time} in {quiet}")
        : new($"{found.Sounding.What}, {found.Sounding.Time}: nobody knows when it must be quiet.", "Ask when it must be quiet.", "quiet hours unknown");

    // Hours that are still a question are one question, whatever sounds in them.
    private static IEnumerable<Case> Against(Given<MomentRange> quiet, IReadOnlyList<Sounding> soundings) => quiet.Is(out var hours)
        ? soundings.Select(sounding => new Case(
            sounding, hours, sounding.Time.Overlaps(hours) ? Verdict.Fails : Verdict.Holds, sounding.At, sounding.RestsOn.With(Doubts.Of(quiet.Doubt))))
        : soundings.Take(1).Select(sounding => new Case(sounding, null, Verdict.CannotBeJudged, quiet.At, Doubts.Of(quiet.Doubt)));

    internal sealed record Case(Sounding Sounding, MomentRange? Quiet, Verdict Verdict, Mark At, Doubts RestsOn)
        : Judgement(Address.Of("schedule") / Sounding.What / Sounding.Time.From.ToString(), At, Verdict, RestsOn);
}

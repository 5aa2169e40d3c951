using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/beam-crowded</c></summary>
internal sealed class BeamCrowded : Rule<BeamCrowded.Case>
{
    // Of rounding.
    private static readonly Length Hair = Length.FromMillimeters(1);

    public override string Name => "rigging/beam-crowded";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "More points of one roof beam are used than its venue allows, or nearer to each other.";

    public override string Why => "A venue's limit of one point is for that many, that far apart; closer together they bear less each.";

    public override string Cures => "Use points further apart or on other beams, or ask the venue's engineer.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from beam in plan.Rigging.Beams
           where beam.Beam.MostPoints is not null
           let most = beam.Beam.MostPoints!.Value
           select new Case(beam, "most-points", !most.Is(out var allowed) ? Verdict.CannotBeJudged : beam.Used <= allowed ? Verdict.Holds : Verdict.Fails, Doubts.Of(most.Doubt), null),
        .. from beam in plan.Rigging.Beams
           where beam.Beam.Apart is not null
           let least = beam.Beam.Apart!.Value
           let nearest = NearestOf(beam)
           select new Case(beam, "points-apart", Judge(beam, least, nearest), Doubts.Of(least.Doubt).With(beam.Moment.RestsOn), nearest),
    ];

    protected override Said Say(Case found) => (found.Verdict, found.Nearest, found.Beam.Beam) switch
    {
        (Verdict.CannotBeJudged, null, { Apart: not null }) => new($"{found.Beam.Beam.Name}: nobody has told where its points are along it, or how far apart they must be.", "Ask the venue's engineer.", $"unknown"),
        (Verdict.CannotBeJudged, _, _) => new($"{found.Beam.Beam.Name}: nobody has told how many of its points may be used, or how far apart.", "Ask the venue's engineer.", $"unknown"),
        (_, { } nearest, { Apart: { IsKnown: true } apart }) => new($"{found.Beam.Beam.Name}: two points that are used are {nearest} apart, and {apart.Value} is the least.", Cures, $"{nearest} of {apart.Value}"),
        _ => new($"{found.Beam.Beam.Name}: {found.Beam.Used} points are used, and {found.Beam.Beam.MostPoints!.Value.Value} may be.", Cures, $"{found.Beam.Used} of {found.Beam.Beam.MostPoints!.Value.Value}"),
    };

    private static Verdict Judge(BeamPlan beam, Given<Length> least, Length? nearest) => beam.Used < 2 ? Verdict.Holds
        : !least.Is(out var allowed) || nearest is null ? Verdict.CannotBeJudged
        : nearest >= allowed - Hair ? Verdict.Holds : Verdict.Fails;

    private static Length? NearestOf(BeamPlan beam) => beam.Along is { Count: > 1 } along ? Length.FromMeters(along.Zip(along.Skip(1), (one, next) => next - one).Min()) : null;

    internal sealed record Case(BeamPlan Beam, string Which, Verdict Is, Doubts Open, Length? Nearest) : Judgement(Beam.Address / Which, Beam.At, Is, Open);
}

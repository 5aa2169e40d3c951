using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/sideways-unknown</c></summary>
internal sealed class SidewaysUnknown : Rule<SidewaysUnknown.Case>
{
    public override string Name => "rigging/sideways-unknown";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Wind or a line pushes a truss sideways, or leaning chains press it from end to end, and nobody knows how much, or what it bears that way.";

    public override string Why => "A truss that bears a load down may fold sideways under a part of it: its chords are braced one way.";

    public override string Cures => "Write the gust and what wind sees, and sideways moment and pressing force by its maker to the truss in the stock; or bring the points over the picks.";

    public override Publication Source => Handbook.RiggingStandards.Truss;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Sideways.IsPushed && truss.Together.Value is not null).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name}: {Of(found.Truss.Sideways)}.", Cures, Of(found.Truss.Sideways));

    private static Words Of(TrussSideways sideways) => sideways switch
    {
        { Moment.Value: null } => "what pushes it sideways cannot be worked out",
        { Pressed.Value: null } => "what presses it from end to end cannot be worked out",
        { Moment.Value: { NewtonMeters: > 0 } moment, Allowed.Value: null } => Words.Of($"{moment} bend it sideways, and its maker's sideways moment is not known"),
        _ => Words.Of($"{sideways.Pressed.Value!.Value} press it from end to end, and what its maker allows is not known"),
    };

    internal sealed record Case(TrussPlan Truss) : Judgement(
        Truss.Address / "sideways", Truss.Placed.Truss.At, Truss.Sideways.Together.Value is null ? Verdict.CannotBeJudged : Verdict.Holds, Truss.RestsOn.With(Truss.Sideways.Together.RestsOn));
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/beam-overload</c></summary>
internal sealed class BeamOverload : Rule<BeamOverload.Case>
{
    public override string Name => "rigging/beam-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A beam of the roof, a bay of it, or the whole roof carries more than its venue allows.";

    public override string Why => "Points that each hold may together be too much for what they hang on.";

    public override string Cures => "Move points towards the beam's ends, share them among beams, or ask the venue's engineer.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. plan.Rigging.Beams.Select(beam => new Case(beam, null, null, beam.Address, beam.At, Worse(beam), beam.Moment.RestsOn.With(beam.MomentAllowed.RestsOn))),
        .. plan.Rigging.Bays.Where(bay => bay.All.Value is not null).Select(bay => new Case(null, bay.All.Value, bay.Limit.Value, bay.Address, bay.Points[0].At, bay.All.AtMost(bay.Limit), bay.All.RestsOn.With(bay.Limit.RestsOn)) { Part = bay.Bay.Name }),
        .. plan.Brief.Venue.RoofLimit is { } limit && plan.Rigging.Roof is { Value: not null } all
            ? [new Case(null, all.Value, limit.IsKnown ? limit.Value : null, Address.Of("rigging") / "roof", plan.Rigging.Points[0].At, all.AtMost(Figure.From(limit)), all.RestsOn)]
            : Array.Empty<Case>(),
    ];

    protected override Said Say(Case found) => found switch
    {
        { Beam: null } => new($"{found.Part}: {found.All!.Value} at rest, and it may carry {Known(found.Most)}.", "Take weight off, or ask the venue's engineer.", $"{found.All!.Value}"),
        { Verdict: Verdict.CannotBeJudged } => new($"{found.Beam!.Beam.Name}: nobody has told what the beam bears, or where its points are on it.", "Ask the venue's engineer for its span and what its middle may carry.", $"unknown"),
        _ => new(
            $"{found.Beam!.Beam.Name}: a moment of {found.Beam.Moment.Value!.Value}, and {Known(found.Beam.MomentAllowed.Value)} is allowed.",
            "Move points towards the beam's ends, or share them among beams.",
            $"{found.Beam.Moment.Value!.Value}"),
    };

    private static Words Known<T>(T? value)
        where T : struct => value is { } known ? Words.Of($"{known}") : Words.FromString("nobody knows how much");

    private static Verdict Worse(BeamPlan beam)
    {
        var moment = beam.Moment.AtMost(beam.MomentAllowed);
        var shear = beam.ShearAllowed.Value is null ? Verdict.Holds : beam.Shear.AtMost(beam.ShearAllowed);
        return moment == Verdict.Fails || shear == Verdict.Fails ? Verdict.Fails : moment;
    }

    internal sealed record Case(BeamPlan? Beam, Mass? All, Mass? Most, Address Of, Mark Written, Verdict Is, Doubts Open) : Judgement(Of, Written, Is, Open)
    {
        /// <summary>What of the roof it is, where it is no beam.</summary>
        public string Part { get; init; } = "The whole roof";
    }
}

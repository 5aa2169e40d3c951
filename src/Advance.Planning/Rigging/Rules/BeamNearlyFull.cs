using System.Numerics;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/beam-nearly-full</c></summary>
internal sealed class BeamNearlyFull : Rule<BeamNearlyFull.Case>
{
    public override string Name => "rigging/beam-nearly-full";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A beam of the roof, a bay of it, or the whole roof carries nearly all that its venue allows.";

    public override string Why => "What else hangs on it is known to nobody but the venue, and one more point on it may be too much.";

    public override string Cures => "Share the load among beams, move points towards the beam's ends, or weights as weighed.";

    public override Publication Source => Publication.CommonPractice;

    // Where one carries more, or nobody knows, another rule says so.
    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from beam in plan.Rigging.Beams
           where beam.Moment.AtMost(beam.MomentAllowed) == Verdict.Holds && beam.Shear.AtMost(beam.ShearAllowed) != Verdict.Fails
           select new Case(NearOf(beam, UseOf(plan)), beam.Address, beam.At, beam.Moment.RestsOn.With(beam.MomentAllowed.RestsOn)),
        .. from bay in plan.Rigging.Bays
           where bay.All.AtMost(bay.Limit) == Verdict.Holds
           select new Case(Near(bay.Bay.Name, "", bay.All, bay.Limit, UseOf(plan)), bay.Address, bay.Points[0].At, bay.All.RestsOn.With(bay.Limit.RestsOn)),
        .. plan.Brief.Venue.RoofLimit is { } limit && plan.Rigging.Roof is { } all && all.AtMost(Figure.From(limit)) == Verdict.Holds
            ? [new Case(Near("The whole roof", "", all, Figure.From(limit), UseOf(plan)), Address.Of("rigging") / "roof", plan.Rigging.Points[0].At, all.RestsOn)]
            : Array.Empty<Case>(),
    ];

    protected override Said Say(Case found) => new($"{found.Near!}.", "Share the load among beams, move points towards the beam's ends, or weights as weighed.", found.Near!);

    private static double UseOf(Plan plan) => plan.Brief.Company.Policies.Rigging.Use;

    private static Words? NearOf(BeamPlan beam, double use) =>
        Near(beam.Beam.Name, "a moment of ", beam.Moment, beam.MomentAllowed, use) ?? Near(beam.Beam.Name, "an end reaction of ", beam.Shear, beam.ShearAllowed, use);

    private static Words? Near<T>(string name, string what, Figure<T> has, Figure<T> may, double use)
        where T : struct, IComparable<T>, IMultiplyOperators<T, double, T> =>
        NearLimit.Is(has, may, use) ? Words.Of($"{name}: {what}{has.Value!.Value} of {may.Value!.Value}") : null;

    internal sealed record Case(Words? Near, Address Of, Mark Written, Doubts Open) : Judgement(Of / "nearly", Written, Near is null ? Verdict.Holds : Verdict.Fails, Open);
}

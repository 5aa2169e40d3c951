using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/no-stage-mains-near</c></summary>
internal sealed class NoStageMainsNear : Rule<NoStageMainsNear.Case>
{
    public override string Name => "power/no-stage-mains-near";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A thing of an act that needs mains stands further from every box and strip than one lead reaches.";

    public override string Why => "Somebody runs two leads across the stage to it in the changeover, joined under a musician's foot.";

    public override string Cures => "Stand a strip or a box where it plays.";

    public override Publication Source => Publication.CommonPractice;

    // One case an act. What nobody places, and what no box is there for at all, is asked for by others; whoever fixed a circuit by hand knows.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var (most, boxes) = (plan.Brief.Company.Policies.StageMains, Boxes(plan));
        return
            from circuit in plan.Power.Circuits
            where circuit.Chain.Row is null
            from load in circuit.Chain.Loads
            where load.Act is not null && load.Spot is not null && boxes.Count > 0
            group new Away(load, boxes.Min(load.Spot!.Value.To)) by load.Act! into act
            select new Case(act.Key, [.. act.Where(one => one.Metres > most.Meters)], act.First().Load.At);
    }

    protected override Said Say(Case found) => new(
        $"{found.Act}: {string.Join(", ", found.Far.Select(one => one.Load.Name))} {(found.Far.Count == 1 ? "stands" : "stand")} up to {Length.FromMeters(found.Far.Max(one => one.Metres))} from the nearest box or strip.",
        "Stand a strip or a box where it plays.",
        $"{string.Join(", ", found.Far.Select(one => one.Load.Name))}");

    private static List<Spot> Boxes(Plan plan) =>
        [.. plan.Power.Distributions.Select(box => plan.Power.Things.FirstOrDefault(thing => thing.Address == box.Address)?.Spot).OfType<Spot>()];

    internal sealed record Away(PowerLoad Load, double Metres);

    internal sealed record Case(string Act, IReadOnlyList<Away> Far, Mark At)
        : Judgement(Address.Of("power") / "mains-near" / Act, At, Far.Count > 0 ? Verdict.Fails : Verdict.Holds, Doubts.None);
}

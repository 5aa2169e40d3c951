using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/drop-too-high</c></summary>
internal sealed class DropTooHigh : Rule<DropTooHigh.Case>
{
    public override string Name => "power/drop-too-high";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "On the leads as picked more voltage is lost up to the last unit of a circuit than the company allows.";

    public override string Why => "Amplifiers limit early, lamps are dim, and power supplies draw more to make up for it.";

    public override string Cures => "A larger section for the longest lead, a shorter way, or a distribution nearer to the load.";

    public override Publication Source { get; } = new("IEC 60364-5-52, Annex G: 3 % for lighting, 5 % for other uses from the origin of the installation", "2009", "Table G.52.1", Standing.Read);

    // What keeps one circuit from being worked out mostly keeps all: one feeder, one service. That is one question.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var all = plan.Voltage.Circuits.Select(circuit => new Case(circuit, MostOf(circuit, plan.Brief.Company.Policies), [circuit.Circuit.Name])).ToList();
        var open = all.Where(found => found.Verdict == Verdict.CannotBeJudged).ToList();
        return all.Except(open).Concat(open.Take(1).Select(first => first with
        {
            Names = [.. open.SelectMany(found => found.Names)],
            RestsOn = open.Aggregate(Doubts.None, (sum, found) => sum.With(found.RestsOn)),
        }));
    }

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.All}: the voltage drop cannot be worked out, since a lead, a draw or the supply is not known.",
            "Give the places of services and units, the sections of leads and the draws.",
            $"{found.Names.Count} circuits unknown")
        : new(
            $"{found.Of.Circuit.Name}: {found.Of.Drop.Value!.Value} lost up to {found.Of.Circuit.Chain.Loads[^1].Name}, {found.Most.Value!.Value} allowed.",
            "A larger section for the longest lead, a shorter way, or a distribution nearer to the load.",
            $"{found.Of.Drop.Value!.Value} of {found.Most.Value!.Value}");

    private static Figure<Ratio> MostOf(CircuitVoltage circuit, Policies policies) => circuit.Circuit.Chain.First.Use == PowerUse.Lighting
        ? Figure.Policy("drop-lighting", Ratio.FromPercent(policies.DropLighting))
        : Figure.Policy("drop-other", Ratio.FromPercent(policies.DropOther));

    internal sealed record Case(CircuitVoltage Of, Figure<Ratio> Most, IReadOnlyList<string> Names)
        : Judgement(Of.Circuit.Address / "drop", Of.Circuit.Chain.At, Of.Drop.AtMost(Most), Of.Drop.RestsOn)
    {
        public string All => Names.Count > 1 ? $"{Names[0]} and {Names.Count - 1} more" : Names[0];
    }
}

using Advance.Domain.Findings;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheets of generators.</summary>
internal static class GeneratorViews
{
    /// <summary>Null where the show hangs on no generator.</summary>
    public static GeneratorsView? Of(Plan plan) => plan.Power.Generators.Count > 0 ? new GeneratorsView([.. plan.Power.Generators.Select(set => ViewOf(set, plan))]) : null;

    private static GeneratorView ViewOf(GeneratorPlan set, Plan plan)
    {
        var cells = new Cells(plan);
        var facts = new GeneratorFacts(set, cells);
        return new GeneratorView(
            $"generator-{Slug.Of(set.Service.Service!.Name)}",
            plan.Power.Generators.Count == 1 ? "Generator" : $"Generator, {set.Service.Name}",
            [.. facts.Set()],
            [.. facts.Earth()],
            [.. facts.Asked()],
            FindingViews.Of(plan, finding => IsOf(finding, set.Service)),
            [.. set.Service.Legs.Select(use => LegOf(use, cells))],
            [.. set.Steps.Select(step => StepOf(step, cells))],
            [.. set.Spells.Select(spell => HourOf(spell, cells))],
            [.. facts.Fuel()],
            Assumed(set),
            Cells.Head(plan.Power.RestsOn));
    }

    // Notes about the set itself stand here too; of the service what weighs.
    private static bool IsOf(Finding finding, SupplyPoint service) =>
        FindingViews.IsAt(finding, (service.Address / "generator").Text) || (finding.Severity >= Severity.Concern && FindingViews.IsAt(finding, service.Address.Text));

    private static GeneratorView.Leg LegOf(LegUse use, Cells cells) => new(
        Cell.Of(use.Leg.Length > 0 ? use.Leg : "L") with { Strong = true },
        cells.Amount(use.InUse, Amperes, 1) with { Strong = true },
        Cell.Of(use.StateInWords),
        cells.Amount(use.AtMost, Amperes, 1));

    private static GeneratorView.Step StepOf(LoadStep step, Cells cells) => new(
        Cell.Number(step.On.Number),
        Cell.Of(step.On.Device.Name),
        Cell.Of(string.Join(", ", step.On.Circuits.Select(circuit => circuit.Chain.Name))),
        cells.Amount(step.Load, load => (double)load.Kilovoltamperes, 1),
        cells.Amount(step.Share, share => share.Percent, 0),
        cells.Amount(step.On.Inrush, Amperes, 0));

    private static GeneratorView.Hour HourOf(GeneratorSpell spell, Cells cells) => new(
        Cell.Of(spell.Power.StateInWords),
        Cell.Of(spell.When.ToString()),
        cells.Amount(spell.Time, time => time.Hours, 2),
        cells.Amount(spell.Power.Real, power => (double)power.Kilowatts, 1),
        cells.Amount(spell.Share, share => share.Percent, 0) with { Strong = true },
        cells.Amount(spell.SureShare, share => share.Percent, 0),
        cells.Amount(spell.AnHour, volume => volume.Liters, 1),
        cells.Amount(spell.Burnt, volume => volume.Liters, 0));

    private static string Assumed(GeneratorPlan set)
    {
        var count = set.Power.Assumed.Count;
        return count == 0 ? "" : $"Power factor taken as 1 for {count} {(count == 1 ? "load" : "loads")} of which nobody knows it.";
    }

    private static double Amperes(UnitsNet.ElectricCurrent current) => current.Amperes;
}

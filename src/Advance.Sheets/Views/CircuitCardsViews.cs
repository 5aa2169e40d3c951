using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the cards of circuits.</summary>
internal static class CircuitCardsViews
{
    /// <summary>Null where no outlet is used.</summary>
    public static CircuitCardsView? Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        var cells = new Cells(plan);
        var leads = new LeadCells(plan, speech);
        var cards = plan.Power.Circuits.Select(circuit => new CircuitCardsView.Card(
            Cell.Of($"{circuit.Outlet.Device?.Name}-{circuit.Outlet.Number}"),
            Cell.Of(circuit.Chain.Name) with { Strong = true },
            leads.Lead(plan.Links.FirstOrDefault(link => link.Carries == LeadCells.Mains && link.From.Port.Device == circuit.Outlet.Device?.Name && link.From.Port.Number == circuit.Outlet.Number)),
            Short(cells.WithUnit(circuit.Use.InUse)),
            plan.Power.StepOf(circuit.Outlet) is { } step ? Cell.Number(step.Number) : Cell.Blank)).ToList();
        return cards.Count > 0 ? new CircuitCardsView(cards, Cells.Head(plan.Power.RestsOn.With(plan.Cables.RestsOn))) : null;
    }

    // A card has no room for who answers what is open; other sheets say it.
    private static Cell Short(Cell cell) => cell.Tbc is null ? cell : cell with { Tbc = "" };
}

using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>An outlet with what hangs on it.</summary>
/// <param name="Address">Its name in the plan: <c>power/PD1/3</c>.</param>
/// <param name="Name">On paper: <c>PD1 outlet 3</c>.</param>
/// <param name="Outlet">The outlet, and all that carries it.</param>
/// <param name="Chain">What hangs on it, from the outlet on.</param>
/// <param name="Use">What it carries.</param>
/// <param name="Why">Whether the outlet was fixed by hand.</param>
public sealed record Circuit(
    Address Address,
    string Name,
    SupplyPoint Outlet,
    PowerChain Chain,
    LegUse Use,
    Reason Why)
{
    /// <summary>In the protective conductor, all units together.</summary>
    public Figure<ElectricCurrent> Leakage => Outlet.Leakage;

    /// <summary>All units switched on at once, peak.</summary>
    public Figure<ElectricCurrent> Inrush => Outlet.Inrush;

    /// <summary>The outlet's row in the stock.</summary>
    public OutletRow Row => Outlet.Row!;
}

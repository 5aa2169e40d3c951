using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/no-residual-protection</c></summary>
internal sealed class NoResidualProtection : Rule<NoResidualProtection.Case>
{
    public override string Name => "power/no-residual-protection";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A circuit for things that people touch has no residual-current device of 30 mA between it and the service.";

    public override string Why => "A live case is then felt before anything trips.";

    public override string Cures => "Bring a distribution with 30 mA devices, or have the venue confirm and test its own.";

    public override Publication Source { get; } = new("IEC 60364-4-41: 30 mA for socket-outlets up to 32 A", "", "411.3.3", Standing.Read);

    private static readonly Figure<ElectricCurrent> Most = new(ElectricCurrent.FromAmperes(0.03), Domain.Facts.Doubts.None, Reason.Derived.It);

    // Any device on the way will do; the service's own is asked for last.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Circuits
        .GroupBy(circuit => circuit.Outlet.Device!)
        .Select(group => new Case(group.First(), Best(group.First())));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Circuit.Outlet.Device!.Name}: nobody knows of a residual-current device before its outlets.", "Write residual in the stock, or residual-protection of the service.", $"unknown")
        : new($"{found.Circuit.Outlet.Device!.Name}: {found.Best.Value!.Value} is the finest residual-current device before its outlets, {Most.Value!.Value} is asked for.", "Bring a distribution with 30 mA devices.", $"{found.Best.Value!.Value}");

    private static Figure<ElectricCurrent> Best(Circuit circuit)
    {
        var all = circuit.Outlet.Upwards.SelectMany(Devices).ToList();
        return all.Where(device => device.Value is not null).MinBy(device => device.Value!.Value.Amperes) ?? all[^1];
    }

    private static IEnumerable<Figure<ElectricCurrent>> Devices(SupplyPoint point)
    {
        if (point.Row is { } row)
        {
            yield return Figure.From(row.Residual);
        }

        if (point.Service is { } service)
        {
            yield return Figure.From(service.ResidualProtection);
        }
    }

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Best)
        : Judgement(Address.Of("power") / Circuit.Outlet.Device!.Name / "residual", Circuit.Outlet.At, Best.AtMost(Most), Best.RestsOn);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>power/one-device-darkens-all</c></summary>
internal sealed class OneDeviceDarkensAll : Rule<OneDeviceDarkensAll.Case>
{
    public override string Name => "power/one-device-darkens-all";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "All lighting positions hang behind the device of one outlet, or have one residual-current device as their nearest.";

    public override string Why => "One wet connector, and the stage is dark with people on it.";

    public override string Cures => "Feed the positions from outlets with devices of their own.";

    public override Publication Source { get; } = new("IEC 60364-3: division of the installation, so that a fault darkens no more than it must", "", "314", Standing.FromMemory);

    // One position has one lead. The breaker of a service opens on what is on it; its residual-current device on any drop of water, unless one
    // nearer opens first, or with it, which another rule tells.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var lights = plan.Power.Circuits.Where(circuit => circuit.Chain.First.Piece?.Kind?.Role == Role.Fixture).ToList();
        return lights.Count > 1 ? [new Case(lights, Common(lights, outlet => outlet.Protection) is { Row: not null } outlet ? outlet : Common(lights, Nearest))] : [];
    }

    protected override Said Say(Case found) => new(
        $"{found.Device!.Name} feeds all lights{(found.Device.Row is null ? " by one residual-current device" : "")}: {string.Join(", ", found.Lights.Select(circuit => circuit.Chain.Name))}.",
        "Feed the positions from outlets with devices of their own.",
        $"{found.Device.Name}");

    // Nobody knows of a device nearer where an outlet that nobody described is between.
    private static SupplyPoint? Nearest(SupplyPoint outlet) =>
        outlet.Upwards.TakeWhile(point => !IsAsked(point)).Select(ResidualDevice.At).OfType<ResidualDevice>().FirstOrDefault()?.Point;

    private static bool IsAsked(SupplyPoint point) => point.Row is { Device.Length: > 0, Residual.IsKnown: false };

    private static SupplyPoint? Common(IReadOnlyList<Circuit> lights, Func<SupplyPoint, SupplyPoint?> of)
    {
        var devices = lights.Select(circuit => of(circuit.Outlet)).DistinctBy(point => point?.Address).ToList();
        return devices.Count == 1 ? devices[0] : null;
    }

    internal sealed record Case(IReadOnlyList<Circuit> Lights, SupplyPoint? Device)
        : Judgement(Address.Of("power") / "lights", Lights[0].Chain.At, Device is null ? Verdict.Holds : Verdict.Fails, Doubts.None);
}

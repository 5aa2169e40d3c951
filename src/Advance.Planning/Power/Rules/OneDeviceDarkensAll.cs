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

    public override string Catches => "All lighting positions hang behind the device of one outlet.";

    public override string Why => "One wet connector, and the stage is dark with people on it.";

    public override string Cures => "Feed the positions from outlets with devices of their own.";

    public override Publication Source { get; } = new("IEC 60364-3: division of the installation, so that a fault darkens no more than it must", "", "314", Standing.FromMemory);

    // One position has one lead; a service's own device is the venue's, and no outlet cures it.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var lights = plan.Power.Circuits.Where(circuit => circuit.Chain.First.Piece?.Kind?.Role == Role.Fixture).ToList();
        return lights.Count > 1 ? [new Case(lights, lights.Select(circuit => circuit.Outlet.Protection).DistinctBy(point => point?.Address).ToList())] : [];
    }

    protected override Said Say(Case found) => new(
        $"{found.Device!.Name} feeds all lights: {string.Join(", ", found.Lights.Select(circuit => circuit.Chain.Name))}.",
        "Feed the positions from outlets with devices of their own.",
        $"{found.Device.Name}");

    internal sealed record Case(IReadOnlyList<Circuit> Lights, IReadOnlyList<SupplyPoint?> Devices)
        : Judgement(Address.Of("power") / "lights", Lights[0].Chain.At, Devices is [{ Row: not null }] ? Verdict.Fails : Verdict.Holds, Doubts.None)
    {
        public SupplyPoint? Device => Devices[0];
    }
}

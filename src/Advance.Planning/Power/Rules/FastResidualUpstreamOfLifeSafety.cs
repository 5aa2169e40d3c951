using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/fast-residual-upstream-of-life-safety</c></summary>
internal sealed class FastResidualUpstreamOfLifeSafety : Rule<FastResidualUpstreamOfLifeSafety.Case>
{
    public override string Name => "power/fast-residual-upstream-of-life-safety";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Exit lights or a voice alarm hang behind a residual-current device that does not wait.";

    public override string Why => "A wet plug anywhere on the show then puts out what people find their way out by.";

    public override string Cures => "Feed it from a circuit of its own before the residual-current devices of the show.";

    public override Publication Source { get; } = new("BS 7909: life safety is not fed through protective devices of the show", "2011", "7.14", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        from load in circuit.Chain.Loads
        where load.Piece?.Kind?.Mains?.IsLifeSafety is { IsKnown: true, Value: true }
        select new Case(load, Fastest(circuit.Outlet), IsAsked(circuit.Outlet));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Load.Name} is life safety, and nobody knows {(found.Device is null ? "whether a residual-current device is before it" : $"how long the residual-current device of {found.Device.Point.Name} waits")}.", "Write residual and residual-delay, or feed it before the show.", $"unknown")
        : new($"{found.Load.Name} is life safety and hangs behind {found.Device!.Rating.Value!.Value} of {found.Device.Point.Name}, which does not wait.", "Feed it from a circuit of its own before the residual-current devices of the show.", $"{found.Device.Point.Name}");

    // One that surely does not wait comes first, then one of which nobody knows.
    private static ResidualDevice? Fastest(SupplyPoint outlet) =>
        ResidualDevice.Above(outlet).OrderBy(device => device.IsDelayed switch { false => 0, null => 1, true => 2 }).FirstOrDefault();

    // An outlet that nobody described, or a service.
    private static bool IsAsked(SupplyPoint outlet) =>
        outlet.Upwards.Any(point => (point.Row is { Device.Length: > 0, Residual.IsKnown: false }) || point.Service is { ResidualProtection.IsKnown: false });

    internal sealed record Case(PowerLoad Load, ResidualDevice? Device, bool HasUnknown)
        : Judgement(Load.Address / "life-safety", Load.At, Judge(Device, HasUnknown), Device?.DelayRestsOn ?? Doubts.None)
    {
        private static Verdict Judge(ResidualDevice? device, bool hasUnknown) => device?.IsDelayed switch
        {
            false => Verdict.Fails,
            null when device is not null || hasUnknown => Verdict.CannotBeJudged,
            true when hasUnknown => Verdict.CannotBeJudged,
            _ => Verdict.Holds,
        };
    }
}

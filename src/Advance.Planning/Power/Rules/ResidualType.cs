using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/residual-type</c></summary>
internal sealed class ResidualType : Rule<ResidualType.Case>
{
    public override string Name => "power/residual-type";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A residual-current device before show equipment is of type AC, or of a lower type than a unit behind it asks for.";

    public override string Why => "Electronics leak direct current: it saturates the device, which then no longer opens on a real fault.";

    public override string Cures => "Use devices of type A or F; of type B before what asks for it.";

    public override Publication Source => Bs7671.ResidualTypes;

    // One case a box or a service. Where nobody says the type, it matters only to what asks for more than the floor.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Services.Concat(plan.Power.Feeders).Concat(plan.Power.Circuits.Select(circuit => circuit.Outlet)).DistinctBy(point => point.Address)
        where point.Loads.Count > 0 && point.Rules != WiringRules.Nec
        let device = ResidualDevice.At(point)
        where device is not null
        let asking = Asking(point)
        where device.Sees is not null || asking is not null
        group CaseOf(device, asking) by point.Device?.Name ?? point.Name into box
        select box.OrderByDescending(found => Rank(found.Verdict)).First();

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Device.Point.Name}: nobody knows the type of its residual-current device, and {found.Asking!.Name} asks for {Text(found)}.", "Write residual-type.", $"unknown")
        : found.Asking is { } load
        ? new($"{found.Device.Point.Name}: its residual-current device is of type {found.Device.Type!.Value.Value}, and {load.Name} asks for {Text(found)}.", $"Feed it from a device of type {Text(found)}, with none of a lower type before that.", $"{found.Device.Type.Value.Value} for {Text(found)}")
        : new($"{found.Device.Point.Name}: its residual-current device is of type AC, and electronics hang behind it.", "Use a device of type A or F.", $"AC");

    private static string Text(Case found) => Needs(found.Asking!)!.Value.ToString();

    private static Handbook.ResidualType? Needs(PowerLoad load) => ResidualDevice.KindOf(load.Piece?.Kind?.Mains?.NeedsResidualType);

    // The one that asks for the most.
    private static PowerLoad? Asking(SupplyPoint point) =>
        point.Loads.Where(load => Needs(load) > Handbook.ResidualType.A).OrderByDescending(load => Needs(load)).FirstOrDefault();

    private static Case CaseOf(ResidualDevice device, PowerLoad? asking) =>
        new(device, asking, device.Sees is not { } type ? Verdict.CannotBeJudged : ResidualDevices.Sees(type, asking is null ? Handbook.ResidualType.A : Needs(asking)!.Value) ? Verdict.Holds : Verdict.Fails);

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 2,
        Verdict.CannotBeJudged => 1,
        _ => 0,
    };

    internal sealed record Case(ResidualDevice Device, PowerLoad? Asking, Verdict Verdict)
        : Judgement(Device.Point.Address / "residual-type", Device.Point.At, Verdict, Device.TypeRestsOn);
}

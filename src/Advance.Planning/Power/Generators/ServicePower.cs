using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Real and apparent power of a service, in every show state.</summary>
/// <param name="Service">The service.</param>
/// <param name="States">Every state, in the order in which they are named.</param>
/// <param name="Assumed">Loads of which nobody knows the power factor; they are taken at 1.</param>
public sealed record ServicePower(SupplyPoint Service, IReadOnlyList<StatePower> States, IReadOnlyList<string> Assumed)
{
    /// <summary>Voltage to neutral.</summary>
    public required Figure<ElectricPotential> Voltage { get; init; }

    /// <summary>The state in which most real power is drawn; one in which nobody knows comes first.</summary>
    public StatePower Worst { get; } = States.FirstOrDefault(one => one.Real.Value is null) ?? States.MaxBy(one => one.Real.Value!.Value.Watts)!;

    /// <summary>The state in which most apparent power is drawn; one in which nobody knows comes first.</summary>
    public StatePower MostApparent { get; } = States.FirstOrDefault(one => one.Apparent.Value is null) ?? States.MaxBy(one => one.Apparent.Value!.Value.Voltamperes)!;

    /// <summary>The state in which most reactive power leads; one in which nobody knows comes first.</summary>
    public StatePower MostLeading { get; } = States.FirstOrDefault(one => one.Leading.Value is null) ?? States.MaxBy(one => one.Leading.Value!.Value.Voltamperes)!;

    /// <summary>What flows at the first moment on the worst line when all starts at once that does not start later, as root mean square.</summary>
    public required Figure<ElectricCurrent> RestartInrush { get; init; }

    /// <summary>What then comes on at once, in use.</summary>
    public required Figure<ElectricApparentPower> RestartLoad { get; init; }

    /// <summary>Its numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "real", $"{Service.Name}, real power, worst in {StateShares.Word(Worst.State)}", Worst.Real),
        Stated.Of(Address / "apparent", $"{Service.Name}, apparent power, worst in {StateShares.Word(MostApparent.State)}", MostApparent.Apparent),
        Stated.Of(Address / "power-factor", $"{Service.Name}, power factor in {StateShares.Word(Worst.State)}", Worst.Factor),
        Stated.Of(Address / "leading", $"{Service.Name}, leading reactive power, worst in {StateShares.Word(MostLeading.State)}", MostLeading.Leading),
        Stated.Of(Address / "restart-inrush", $"{Service.Name}, all restarting at once, worst line", RestartInrush),
        Stated.Of(Address / "restart-load", $"{Service.Name}, all restarting at once, apparent power", RestartLoad),
    ];

    private Address Address => Service.Address / "power";
}

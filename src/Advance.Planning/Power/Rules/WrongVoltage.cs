using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>power/wrong-voltage</c></summary>
internal sealed class WrongVoltage : Rule<WrongVoltage.Case>
{
    public override string Name => "power/wrong-voltage";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something takes another voltage than its supply gives, or than any outlet that takes its plug.";

    public override string Why => "A unit for 120 V on 230 V is scrap in a second; one for 230 V on 120 V does not start.";

    public override string Cures => "Hire a transformer or the unit for this voltage, or set its voltage selector and write both voltages in the stock.";

    public override Publication Source => Publication.Arithmetic;

    // A service whose voltage is open is one question, not as many as things hang on it.
    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. plan.Power.Unfed.Where(unfed => unfed.Reason == UnfedReason.Voltage).Select(unfed => new Case(unfed.Chain.First, null, Verdict.Fails)),
        .. plan.Power.Circuits.SelectMany(circuit => circuit.Chain.Loads.Select(load => (circuit.Outlet, load)))
            .Where(one => one.load.Takes is { IsKnown: true } && one.Outlet.Supply is not null)
            .Select(one => new Case(one.load, one.Outlet, VoltageFit.Volts(one.Outlet.Supply, one.load.Takes!.Value.Value) switch { true => Verdict.Holds, false => Verdict.Fails, _ => Verdict.CannotBeJudged })),
        .. plan.Power.Services.Where(point => point.Supply is null && point.Loads.Count > 0).Select(point => new Case(null, point, Verdict.CannotBeJudged)),
    ];

    protected override Said Say(Case found) => (found.Load, found.Point) switch
    {
        (null, { } point) => new($"{point.Name}: nobody knows its voltage, and {point.Loads.Count} things hang on it.", "Ask for its voltage, phases and frequency, and write supply.", $"unknown"),
        ({ } load, { } point) when found.Verdict == Verdict.Fails => new($"{load.Name} takes {Volts(load)} and gets {point.Supply!.ToString()} on {point.Name}.", "Hire a transformer or the unit for this voltage.", $"{Volts(load)} on {point.Supply!.ToString()}"),
        ({ } load, { } point) => new($"{load.Name} takes {Volts(load)}, and nobody knows what {point.Name} gives between lines.", "Write both voltages of the service: 230/400 V.", $"unknown"),
        _ => new($"{found.Load!.Name} takes {Volts(found.Load)}, and no outlet that takes its plug gives that.", "Hire a transformer or the unit for this voltage.", $"{Volts(found.Load)}"),
    };

    private static Words Volts(PowerLoad load) => $"{load.Takes!.Value.Value.ToString()}";

    internal sealed record Case(PowerLoad? Load, SupplyPoint? Point, Verdict Verdict)
        : Judgement((Load?.Address ?? Point!.Address) / "volts", Load?.At ?? Point!.At, Verdict, Doubts.Of(Load?.Takes?.Doubt).With(Doubts.Of(Point?.Origin?.Supply.Doubt)));
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/no-residual-protection</c></summary>
internal sealed class NoResidualProtection : Rule<NoResidualProtection.Case>
{
    public override string Name => "power/no-residual-protection";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A circuit for things that people touch has no residual-current device of 30 mA between it and the service; in North America, one of 15 or 20 A outdoors none of the personnel class.";

    public override string Why => "A live case is then felt before anything trips.";

    public override string Cures => "Bring a distribution with 30 mA devices, or have the venue confirm and test its own.";

    public override Publication Source { get; } = new("IEC 60364-4-41: 30 mA for socket-outlets up to 32 A; NEC 210.8(B), 525.23 (from memory): personnel class outdoors", "", "411.3.3", Standing.Read);

    private const double MostForHands = 32;

    private const double MostForPersonnelClass = 20;

    private const double MostVoltsForPersonnelClass = 127;

    private static readonly Figure<ElectricCurrent> None = new(null, Doubts.None, Reason.Derived.It);

    private static readonly Figure<ElectricCurrent> Most = new(ElectricCurrent.FromAmperes(0.03), Doubts.None, Reason.Derived.It);

    private static readonly Figure<ElectricCurrent> MostPersonnel = new(PersonnelDevices.OpensFrom, Doubts.None, Reason.Derived.It);

    // Any device on the way will do.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Circuits
        .Where(circuit => circuit.Outlet.Rules == WiringRules.Nec ? IsForPersonnelClass(circuit.Outlet) : IsForHands(circuit.Row))
        .GroupBy(circuit => circuit.Outlet.Device!)
        .Select(group => group.Select(circuit => new Case(circuit, Finest(circuit), MostOf(circuit))).OrderByDescending(found => Rank(found.Verdict)).First());

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged && IsOpen(found.Circuit)
        ? new($"{found.Box}: nobody knows whether it stands outdoors, where a residual-current device of the personnel class is asked for.", "Write outdoor of the service.", $"unknown")
        : found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Box}: nobody knows of a residual-current device before its outlets.", "Write residual in the stock, or residual-protection of the service.", $"unknown")
        : found.Finest.Value!.Value.Amperes == 0
        ? new($"{found.Box}: no residual-current device before its outlets, {found.Most.Value!.Value} is asked for.", Cure(found), $"none")
        : new($"{found.Box}: {found.Finest.Value!.Value} is the finest residual-current device before its outlets, {found.Most.Value!.Value} is asked for.", Cure(found), $"{found.Finest.Value!.Value}");

    private static string Cure(Case found) => found.Circuit.Outlet.Rules == WiringRules.Nec ? "Use outlets of the personnel class, or a lead with such a device at its plug." : "Bring a distribution with 30 mA devices.";

    private static Figure<ElectricCurrent> MostOf(Circuit circuit) => circuit.Outlet.Rules == WiringRules.Nec ? MostPersonnel : Most;

    // Between one line and the neutral, outdoors; a service of which nobody says that it is outdoors is taken as indoors, unless it is asked.
    private static bool IsForPersonnelClass(SupplyPoint outlet) => outlet.Origin?.IsOutdoor is { } outdoor && outdoor.Or(true)
        && outlet.Legs.Count == 1 && outlet.Supply?.Voltages[0].Least.Volts <= MostVoltsForPersonnelClass
        && !(outlet.Limit.Value is { } limit && limit.Amperes > MostForPersonnelClass);

    // Larger connectors feed other boxes.
    private static bool IsForHands(OutletRow row) => !row.Rating.Is(out var rating) || rating.Amperes <= MostForHands;

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 2,
        Verdict.CannotBeJudged => 1,
        _ => 0,
    };

    // Nought is written for none: it is the finest only where there is no other.
    private static Figure<ElectricCurrent> Finest(Circuit circuit)
    {
        var all = circuit.Outlet.Upwards.SelectMany(Devices).ToList();
        var real = all.Where(device => device.Value is { Amperes: > 0 }).MinBy(device => device.Value!.Value.Amperes);
        var open = all.FirstOrDefault(device => device.Value is null);
        return real is not null && real.AtMost(MostOf(circuit)) == Verdict.Holds ? real : open ?? real ?? all.FirstOrDefault() ?? None;
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

    // Whether it is outdoors decides in North America alone.
    private static bool IsOpen(Circuit circuit) => circuit.Outlet.Rules == WiringRules.Nec && circuit.Outlet.Origin?.IsOutdoor is { IsKnown: false };

    private static Doubts Place(Circuit circuit) => circuit.Outlet.Rules == WiringRules.Nec ? Doubts.Of(circuit.Outlet.Origin?.IsOutdoor?.Doubt) : Doubts.None;

    private static Verdict Judge(Circuit circuit, Figure<ElectricCurrent> finest, Figure<ElectricCurrent> most)
    {
        var verdict = finest.Value is { Amperes: 0 } ? Verdict.Fails : finest.AtMost(most);
        return verdict == Verdict.Fails && IsOpen(circuit) ? Verdict.CannotBeJudged : verdict;
    }

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Finest, Figure<ElectricCurrent> Most)
        : Judgement(Address.Of("power") / Circuit.Outlet.Device!.Name / "residual", Circuit.Outlet.At, Judge(Circuit, Finest, Most), Finest.RestsOn.With(Place(Circuit)))
    {
        public string Box => Circuit.Outlet.Device!.Name;
    }
}

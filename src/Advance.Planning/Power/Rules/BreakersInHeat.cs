using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/breakers-in-heat</c></summary>
internal sealed class BreakersInHeat : Rule<BreakersInHeat.Case>
{
    public override string Name => "power/breakers-in-heat";

    public override Severity Severity => Severity.Note;

    public override string Catches => "It is warmer than 30 °C where a distribution with breakers stands.";

    public override string Why => "Breakers are set at 30 °C: in a closed box in the sun they open below their rating.";

    public override string Cures => "Keep boxes in the shade and open, load them less, or ask the maker for the factor at that temperature.";

    public override Publication Source { get; } = new("IEC 60898-1: reference ambient temperature 30 °C", "", "", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from air in plan.Brief.Gig.Temperature is { IsKnown: true } given ? new[] { Figure.From(given) } : []
        from box in plan.Power.Distributions
        where box.DeviceKind?.Outlets.Any(row => row.Device.Length > 0) ?? false
        select new Case(box, air);

    protected override Said Say(Case found) => new(
        $"{found.Box.Name}: breakers are set at 30 °C, and it is {found.Air.Value!.Value} in the air.",
        "Keep it in the shade, load it less, or ask the maker for the factor at that temperature.",
        $"{found.Air.Value!.Value}");

    internal sealed record Case(SupplyPoint Box, Figure<Temperature> Air)
        : Judgement(Box.Address / "heat", Box.At, Air.Value!.Value.DegreesCelsius > Calibrated ? Verdict.Fails : Verdict.Holds, Air.RestsOn)
    {
        private const double Calibrated = 30;
    }
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>power/plug-for-two-voltages</c></summary>
internal sealed class PlugForTwoVoltages : Rule<PlugForTwoVoltages.Case>
{
    public override string Name => "power/plug-for-two-voltages";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "The same connector gives the voltage to neutral on one outlet and the voltage between two lines on another.";

    public override string Why => "Whoever plugs in sees one kind of outlet, and one of the two burns what is plugged in.";

    public override string Cures => "Give outlets between two lines a connector that fits nothing else.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var outlets = plan.Power.Distributions.Where(box => box.Legs.Count > 1 && box.Loom.Count == 0).SelectMany(box => (box.DeviceKind?.Outlets ?? []).Select(row => (Box: box, Row: row))).ToList();
        var toNeutral = outlets.Where(one => !IsBetween(one.Row)).Select(one => one.Row.Connector).ToHashSet(StringComparer.Ordinal);
        return outlets.Where(one => IsBetween(one.Row)).DistinctBy(one => one.Row.Connector, StringComparer.Ordinal).Select(one => new Case(one.Box, one.Row, toNeutral.Contains(one.Row.Connector) ? Verdict.Fails : Verdict.Holds));
    }

    protected override Said Say(Case found) => new(
        $"{found.Box.Name}: {found.Row.Connector} lies between two lines ({found.Row.Phase}){Volts(found)}, and elsewhere between a line and the neutral.",
        "Give outlets between two lines a connector that fits nothing else.",
        $"{found.Row.Connector}");

    private static bool IsBetween(OutletRow row) => OutletPhase.Read(row.Phase) is { Lines.Count: 2, HasNeutral: false };

    private static Words Volts(Case found) => found.Box.Supply is { } supply ? $", {VoltageFit.Between(supply).Voltages[0].ToString()} V" : $"";

    internal sealed record Case(SupplyPoint Box, OutletRow Row, Verdict Verdict)
        : Judgement(Address.Of("power") / "plug" / Row.Connector, Box.At, Verdict, Doubts.Of(Box.Origin?.Supply.Doubt));
}

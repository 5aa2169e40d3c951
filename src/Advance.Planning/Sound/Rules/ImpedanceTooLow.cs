using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>sound/impedance-too-low</c></summary>
internal sealed class ImpedanceTooLow : Rule<ImpedanceTooLow.Case>
{
    public override string Name => "sound/impedance-too-low";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Passive boxes on one channel of an amplifier have together a lower impedance than the channel drives.";

    public override string Why => "The channel shuts down in the loud part, or for good.";

    public override string Cures => "Hang fewer boxes on the channel, or use an amplifier that drives less.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Drive.Loads.Select(load => new Case(load));

    protected override Said Say(Case found)
    {
        var (load, count) = (found.Load, found.Load.Boxes.Count);
        if (load.Impedance.Value is not { } impedance || load.Least.Value is not { } least)
        {
            var what = load.Impedance.Value is null ? "what the boxes have" : "what the amplifier drives";
            return new(
                $"{load.Port.ToString()}: whether it drives {count} {Boxes(count)} is not known, for {what} is not.",
                "Write impedance of the box, and least-impedance of the amplifier, in the stock.",
                $"{count} {Boxes(count)}, impedance unknown");
        }

        return new(
            $"{load.Port.ToString()}: {count} {Boxes(count)} of {Ohms(impedance)} together; it drives {Ohms(least)} and more.",
            "Hang fewer boxes on it.",
            $"{Ohms(impedance)}, {Ohms(least)}");
    }

    private static string Boxes(int count) => count == 1 ? "box" : "boxes";

    private static string Ohms(ElectricResistance resistance) => $"{Numbers.Plain(resistance.Ohms, 2)} ohm";

    internal sealed record Case(AmplifierLoad Load)
        : Judgement(Load.Address, Load.At, Load.Impedance.AtLeast(Load.Least), Load.Impedance.RestsOn.With(Load.Least.RestsOn));
}

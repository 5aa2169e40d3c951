using System.Numerics;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>One voltage of a supply as something sees it: from a line to the neutral, or between two lines.</summary>
/// <param name="Name"><c>L1</c>, <c>L1-L2</c>; empty on a supply of one leg.</param>
/// <param name="Lines">One line, or two; counted from 0.</param>
/// <param name="Angles">Of the supply.</param>
internal sealed record VoltageFrame(string Name, IReadOnlyList<int> Lines, LegAngles Angles)
{
    /// <summary>
    /// How much of a current's drop falls into this voltage, and at what angle to it: its line and the neutral for a voltage to neutral, one line
    /// less the other between lines. Own loads count twice, there and back; loads of other lines by the neutral alone.
    /// </summary>
    public Complex Factor(MainsWiring wiring, DropConductors on) => on switch
    {
        DropConductors.Lines => OnLines(wiring),
        DropConductors.Neutral => OnNeutral(wiring),
        _ => OnLines(wiring) + OnNeutral(wiring),
    };

    private Complex OnLines(MainsWiring wiring)
    {
        if (wiring.Kind == MainsWiringKind.SomeLine)
        {
            return 1;
        }

        var currents = CurrentsOf(wiring);
        return Lines is [var from, var to]
            ? (On(currents, from) - On(currents, to)) / Angles.Between(from, to)
            : On(currents, Lines[0]) / Angles.ToNeutral(Lines[0]);
    }

    // Between two lines the neutral has no part.
    private Complex OnNeutral(MainsWiring wiring) => Lines.Count > 1 || !wiring.UsesNeutral ? 0
        : wiring.Kind == MainsWiringKind.SomeLine ? 1
        : CurrentsOf(wiring).Aggregate(Complex.Zero, (sum, one) => sum + one.Current) / Angles.ToNeutral(Lines[0]);

    // Of one ampere in phase with the voltage that drives it.
    private List<(int Line, Complex Current)> CurrentsOf(MainsWiring wiring) => wiring.Kind == MainsWiringKind.BetweenLines
        ? [(wiring.Lines[0], Angles.Between(wiring.Lines[0], wiring.Lines[1])), (wiring.Lines[1], -Angles.Between(wiring.Lines[0], wiring.Lines[1]))]
        : [.. wiring.Lines.Select(line => (line, Angles.ToNeutral(line)))];

    private static Complex On(List<(int Line, Complex Current)> currents, int line) =>
        currents.Where(one => one.Line == line).Aggregate(Complex.Zero, (sum, one) => sum + one.Current);
}

using Advance.Domain.Facts;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Between which conductors of its supply something lies.</summary>
/// <param name="Kind">How.</param>
/// <param name="Lines">The lines, counted from 0 on the service.</param>
public sealed record MainsWiring(MainsWiringKind Kind, IReadOnlyList<int> Lines)
{
    /// <summary>Whether it puts current on the neutral.</summary>
    public bool UsesNeutral => Kind is MainsWiringKind.ToNeutral or MainsWiringKind.EveryLine or MainsWiringKind.SomeLine;

    /// <summary>The lines between each of which and the neutral it draws its whole current; none where nobody knows which.</summary>
    public IReadOnlyList<int> ToNeutral => Kind is MainsWiringKind.ToNeutral or MainsWiringKind.EveryLine ? Lines : [];

    /// <summary>Whether it still runs when no other lines than these are on.</summary>
    public bool RunsOn(IReadOnlyCollection<int> on) => Kind switch
    {
        MainsWiringKind.ToNeutral or MainsWiringKind.BetweenLines or MainsWiringKind.ThreeWire => Lines.All(on.Contains),
        _ => Lines.Any(on.Contains),
    };

    /// <summary>By how many degrees the voltage that drives it leads the voltage of one of its lines to neutral.</summary>
    public double Turn(LegAngles angles, int line)
    {
        if (Kind != MainsWiringKind.BetweenLines)
        {
            return 0;
        }

        // What goes out by the first line comes back by the second.
        var between = angles.Between(Lines[0], Lines[1]) * (line == Lines[0] ? 1 : -1);
        return Math.Round((between / angles.ToNeutral(line)).Phase * 180 / Math.PI, 6, MidpointRounding.AwayFromZero);
    }

    /// <summary>How a load lies on an outlet.</summary>
    internal static MainsWiring Of(PowerNode outlet, PowerLoad load)
    {
        var lines = outlet.Lines;
        var takes = load.Takes is { } given && given.Is(out var supply) ? supply : null;
        var kind = (lines.Count, takes?.Phases) switch
        {
            (1, _) => MainsWiringKind.ToNeutral,
            (2, _) when outlet.IsBetweenLines || (takes is { Phases: not Phases.Split } && VoltageFit.IsBetweenOnly(outlet.Supply, takes)) => MainsWiringKind.BetweenLines,
            (3, Phases.Three) => takes!.BetweenLines is null ? MainsWiringKind.ThreeWire : MainsWiringKind.EveryLine,
            (2, Phases.Split) => MainsWiringKind.EveryLine,
            _ => MainsWiringKind.SomeLine,
        };
        return new MainsWiring(kind, lines);
    }
}

using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What only a section of truss has, all from its maker.</summary>
/// <param name="Length">Of one section, made up.</param>
/// <param name="Chords">How many: 2, 3 or 4.</param>
/// <param name="Table">What it carries by span, where the maker gives that.</param>
public sealed record Truss(Given<Length> Length, int Chords, IReadOnlyList<SpanRow> Table)
{
    /// <summary>How stiff it is in bending, up and down; null where nobody says.</summary>
    public Given<BendingStiffness>? Bending { get; init; }

    /// <summary>How stiff it is in bending, to the sides; null where nobody says.</summary>
    public Given<BendingStiffness>? SidewaysBending { get; init; }

    /// <summary>How stiff it is in shear; null where nobody says, and then it is taken as stiff.</summary>
    public Given<Force>? ShearStiffness { get; init; }

    /// <summary>The largest moment that makes it sag; null where nobody says.</summary>
    public Given<Torque>? Moment { get; init; }

    /// <summary>The largest moment that makes it hog, over a pick; null where that is the same, and of three chords where nobody says.</summary>
    public Given<Torque>? Hogging { get; init; }

    /// <summary>The largest shear; null where nobody says.</summary>
    public Given<Force>? Shear { get; init; }

    /// <summary>How moment and shear in one place add up, by its maker.</summary>
    public MomentAndShear Adds { get; init; }

    /// <summary>Of three chords, which way up its figures are for; null where nobody says.</summary>
    public Given<Apex>? Apex { get; init; }

    /// <summary>Which chords its picks must hold for its figures; null where nobody says.</summary>
    public Given<HeldChords>? HeldBy { get; init; }

    /// <summary>The largest moment sideways, with nothing hanging on it; null where nobody says.</summary>
    public Given<Torque>? Sideways { get; init; }

    /// <summary>The most that may press it from end to end, with nothing hanging on it; null where nobody says.</summary>
    public Given<Force>? Pressed { get; init; }

    /// <summary>The most that may hang on one node; null where nobody says.</summary>
    public Given<Mass>? NodeLoad { get; init; }

    /// <summary>The most that may hang in one place between two nodes; null where nobody says.</summary>
    public Given<Mass>? BetweenNodes { get; init; }

    /// <summary>The most that one pick may take; null where nobody says.</summary>
    public Given<Mass>? PickLoad { get; init; }

    /// <summary>From node to node; null where nobody says.</summary>
    public Given<Length>? Nodes { get; init; }

    /// <summary>Between the chords, across; null where nobody says.</summary>
    public Given<Length>? Width { get; init; }

    /// <summary>Whether its figures allow for wear already; without it they are taken times 0.85.</summary>
    public bool IsForUsed { get; init; }
}

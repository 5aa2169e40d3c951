using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>The set behind a service.</summary>
public sealed record Generator
{
    /// <summary>Rated apparent power, prime.</summary>
    public Given<ElectricApparentPower> Rating { get; init; }

    /// <summary>What its engine gives, prime; null where nobody says.</summary>
    public Given<UnitsNet.Power>? Engine { get; init; }

    /// <summary>What is left of its rating in this place, for height and heat, by its maker; null where nobody says.</summary>
    public Given<Ratio>? Derating { get; init; }

    /// <summary>What it drives into a short circuit for as long as a device needs; null where nobody says.</summary>
    public Given<ElectricCurrent>? Sustained { get; init; }

    /// <summary>The largest step of load it takes at once, as a share of its rating; null where nobody says.</summary>
    public Given<Ratio>? Step { get; init; }

    /// <summary>The most leading reactive power it bears; null where nobody says.</summary>
    public Given<ElectricApparentPower>? Leading { get; init; }

    /// <summary>How uneven its legs may be: negative over positive sequence; null where nobody says.</summary>
    public Given<Ratio>? Unbalance { get; init; }

    /// <summary>What it burns at some shares of its rating, in the order written.</summary>
    public IReadOnlyList<FuelRow> Fuel { get; init; } = [];

    /// <summary>How much its tank holds; null where nobody says.</summary>
    public Given<Volume>? Tank { get; init; }

    /// <summary>How loud it is at 7 m, as written; null where nobody says.</summary>
    public Given<Level>? Noise { get; init; }

    /// <summary>What takes over when it stops; null where nobody says.</summary>
    public Given<string>? SecondSet { get; init; }

    /// <summary>Where it was written.</summary>
    public Mark At { get; init; } = Mark.Nowhere;
}

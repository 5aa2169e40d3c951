using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>How a loudspeaker hangs, all from its maker, seen from its upper front pin along its own axes.</summary>
/// <param name="PinToPin">From its upper front pin to its lower.</param>
public sealed record Flying(Given<Length> PinToPin)
{
    /// <summary>How far its centre of gravity is behind the pin; null where nobody says.</summary>
    public Given<Length>? CentreBehind { get; init; }

    /// <summary>How far its centre of gravity is below the pin; null where nobody says.</summary>
    public Given<Length>? CentreBelow { get; init; }

    /// <summary>How far its back is behind the pins; null where nobody says.</summary>
    public Given<Length>? Back { get; init; }

    /// <summary>How far its front is ahead of the pins; null means not at all.</summary>
    public Given<Length>? Front { get; init; }

    /// <summary>The angles to the box above that its links allow; empty where nobody says.</summary>
    public IReadOnlyList<Angle> Splays { get; init; } = [];

    /// <summary>How far the line of its rear link is from its upper front pin; null where nobody says.</summary>
    public Given<Length>? LinkArm { get; init; }

    /// <summary>The most that its rear link may bear; null where nobody says.</summary>
    public Given<Force>? RearLimit { get; init; }

    /// <summary>The most that its front pins may bear together; null where nobody says.</summary>
    public Given<Force>? FrontLimit { get; init; }
}

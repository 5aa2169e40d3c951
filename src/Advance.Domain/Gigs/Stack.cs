using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>Boxes standing on each other from the floor up, or flown from the top down; <c>sides</c> makes a mirrored pair of them.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Sides">Null for one stack that stands where its place says.</param>
/// <param name="Place">Of each stack.</param>
/// <param name="Aim">Null means as the company says.</param>
/// <param name="Boxes">As written: from the floor up, lowest first; of a hang its frame first, then from the top down.</param>
/// <param name="FedBy">One port a side, in the order of the sides; one port alone feeds both.</param>
/// <param name="Crossover">Where and at what frequency it is crossed, as written; null where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Stack(
    string Name,
    Sides? Sides,
    Given<Place> Place,
    Given<Aim>? Aim,
    IReadOnlyList<CountedItem> Boxes,
    Given<PortRange>? FedBy,
    Given<Crossover>? Crossover,
    Mark At)
{
    /// <summary>How it is flown; null for what stands on the floor.</summary>
    public Flown? Flown { get; init; }

    /// <summary>What drives its tops where they have outputs of their own, like <see cref="FedBy"/>; null where they are linked from the subs.</summary>
    public Given<PortRange>? TopsFedBy { get; init; }

    /// <summary>What drives its rear-facing boxes where they have outputs of their own; null where they are linked from the others.</summary>
    public Given<PortRange>? RearFedBy { get; init; }

    /// <summary>What straps it together, and how many a stack; null for none.</summary>
    public CountedItem? Strap { get; init; }

    /// <summary>Electronic aim of each box that has it, up from its own axis; null for straight.</summary>
    public Given<Angle>? ElectronicAim { get; init; }

    /// <summary>Delay set by hand; null where it is worked out.</summary>
    public Given<Duration>? Delay { get; init; }

    /// <summary>The stack that it fills in for, near the stage; null where it is no fill.</summary>
    public Given<string>? FillOf { get; init; }

    /// <summary>The stack that it takes over from, further out; null where it is no delay stack.</summary>
    public Given<string>? DelayOf { get; init; }

    /// <summary>Where a fill or a delay stack and the stack before it are to arrive together; null means where it stands itself.</summary>
    public Given<Place>? HeardAt { get; init; }

    /// <summary>What keeps each stack from tipping or sliding in wind.</summary>
    public IReadOnlyList<BallastRow> Ballast { get; init; } = [];

    /// <summary>What each stack stands on that spreads its load; null for none.</summary>
    public Given<Size>? Pad { get; init; }

    /// <summary>Between its lowest box and what it stands on, wet; null means as the site's.</summary>
    public Given<double>? Friction { get; init; }
}

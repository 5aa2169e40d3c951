using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>A kind of item: what is true of every piece of it.</summary>
public sealed record Kind
{
    /// <summary>Its key: <c>sub-18</c>.</summary>
    public required string Id { get; init; }

    /// <summary>As on the shelf label.</summary>
    public required string Name { get; init; }

    /// <summary>Where it was written.</summary>
    public required Mark At { get; init; }

    /// <summary>Which part of the shop it belongs to.</summary>
    public required string Department { get; init; }

    /// <summary>What it is for the planner: a microphone is spared as one, a stand by size.</summary>
    public Role Role { get; init; }

    /// <summary>How many the shop owns.</summary>
    public required Given<int> Owned { get; init; }

    /// <summary>How many of them are out for repair.</summary>
    public int OutForRepair { get; init; }

    /// <summary>Where it lies; empty where not said.</summary>
    public string Shelf { get; init; } = "";

    /// <summary>Of one piece; its <see cref="Given{T}.How"/> says whether it was weighed.</summary>
    public Given<Mass>? Weight { get; init; }

    /// <summary>Across, deep, high.</summary>
    public Given<Size>? Size { get; init; }

    /// <summary>Its size as it travels, folded or rolled; null where that is its size.</summary>
    public Given<Size>? Travels { get; init; }

    /// <summary>How many may stand on one another in a truck, 1 and more; null where not said.</summary>
    public Given<int>? Stacks { get; init; }

    /// <summary>Of a vehicle, what it may carry with driver and fuel aboard; null where not said.</summary>
    public Given<Mass>? Payload { get; init; }

    /// <summary>Whether it sends or receives by radio.</summary>
    public bool IsRadio { get; init; }

    /// <summary>How many go into which case; null where it travels loose.</summary>
    public CountedItem? Packs { get; init; }

    /// <summary>What always goes with one of it.</summary>
    public IReadOnlyList<CountedItem> With { get; init; } = [];

    /// <summary>Ids of kinds that may stand in for it, best first.</summary>
    public IReadOnlyList<string> Substitutes { get; init; } = [];

    /// <summary>Who hires it out; empty where not known.</summary>
    public string HireFrom { get; init; } = "";

    /// <summary>Pieces by serial number.</summary>
    public IReadOnlyList<SerialRow> Serials { get; init; } = [];

    /// <summary>Rows of connectors.</summary>
    public IReadOnlyList<PortRow> Ports { get; init; } = [];

    /// <summary>What it draws; null where it needs no mains.</summary>
    public Mains? Mains { get; init; }

    /// <summary>What a microphone or DI asks of the line; null for all others.</summary>
    public Phantom? Phantom { get; init; }

    /// <summary>A loudspeaker's own facts.</summary>
    public Loudspeaker? Loudspeaker { get; init; }

    /// <summary>The faces it joins, for a joint.</summary>
    public Joint? Joint { get; init; }

    /// <summary>How it stands, and what the wind does to it; null where nobody says.</summary>
    public Stability? Standing { get; init; }

    /// <summary>A truss section's own facts.</summary>
    public Truss? Truss { get; init; }

    /// <summary>A hoist's own facts.</summary>
    public Hoist? Hoist { get; init; }

    /// <summary>Of a part that bears, its own facts.</summary>
    public LiftingGear? Lifting { get; init; }

    /// <summary>A flying frame's own facts.</summary>
    public FlyingFrame? FlyingFrame { get; init; }

    /// <summary>A cable's own facts.</summary>
    public Cable? Cable { get; init; }

    /// <summary>A distribution's outlets, in the order of its circuits.</summary>
    public IReadOnlyList<OutletRow> Outlets { get; init; } = [];

    /// <summary>How many channels a desk has; null where not said, and for all others.</summary>
    public Given<int>? Channels { get; init; }

    /// <summary>How many mixes a desk can send to those on stage; null where not said, and for all others.</summary>
    public Given<int>? Buses { get; init; }

    /// <summary>A fixture's modes: name and number of slots.</summary>
    public IReadOnlyList<ModeRow> Modes { get; init; } = [];
}

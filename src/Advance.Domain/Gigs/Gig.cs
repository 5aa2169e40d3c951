using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>The show, as written.</summary>
public sealed record Gig
{
    /// <summary>Its name on the paper.</summary>
    public required string Title { get; init; }

    /// <summary>Where the title was written.</summary>
    public required Mark At { get; init; }

    /// <summary>Who ordered it; empty where not said.</summary>
    public string Client { get; init; } = "";

    /// <summary>At least one, in order of their dates.</summary>
    public required IReadOnlyList<Day> Days { get; init; }

    /// <summary>The letter of this revision; null before the first.</summary>
    public string? Revision { get; init; }

    /// <summary>When this revision goes out; null for a draft.</summary>
    public Given<WrittenDate>? Issued { get; init; }

    /// <summary>What is new in this revision, in words; empty where not said.</summary>
    public string New { get; init; } = "";

    /// <summary>The crew by name.</summary>
    public IReadOnlyList<Person> People { get; init; } = [];

    /// <summary>What happens when, as written.</summary>
    public IReadOnlyList<ScheduleRow> Schedule { get; init; } = [];

    /// <summary>When each show state is; a state without a row may be at any time.</summary>
    public IReadOnlyList<ShowStateRow> ShowStates { get; init; } = [];
    /// <summary>Hours without sound that the occasion asks for, beside those of the venue; null where there are none.</summary>
    public Given<MomentRange>? Quiet { get; init; }

    /// <summary>Playing areas, in the order written.</summary>
    public IReadOnlyList<Stage> Stages { get; init; } = [];

    /// <summary>What stands around the stages.</summary>
    public IReadOnlyList<Thing> Around { get; init; } = [];

    /// <summary>Who plays.</summary>
    public IReadOnlyList<Act> Acts { get; init; } = [];

    /// <summary>The sound system.</summary>
    public Sound Sound { get; init; } = Sound.None;

    /// <summary>The air at show time, for the speed of sound; null means as the company says.</summary>
    public Given<Temperature>? Temperature { get; init; }

    /// <summary>The wind that things stand up to in this gig; null means as the venue says.</summary>
    public Wind? Wind { get; init; }

    /// <summary>The network that units with a control port are on; null means as the company says.</summary>
    public Network? Network { get; init; }

    /// <summary>Distributions and fixed circuits.</summary>
    public Power Power { get; init; } = Power.None;

    /// <summary>Fixtures and where they are.</summary>
    public Lighting Lighting { get; init; } = Lighting.None;

    /// <summary>What hangs.</summary>
    public Rigging Rigging { get; init; } = Rigging.None;

    /// <summary>Named ways that cables take.</summary>
    public IReadOnlyList<CableWay> CableWays { get; init; } = [];

    /// <summary>Hands and meals.</summary>
    public Crew Crew { get; init; } = Crew.None;

    /// <summary>What it all travels in.</summary>
    public IReadOnlyList<Truck> Trucks { get; init; } = [];

    /// <summary>Loose things to bring.</summary>
    public IReadOnlyList<Extra> Extras { get; init; } = [];

    /// <summary>What stands for kit that is not chosen yet.</summary>
    public IReadOnlyList<Allowance> Allowances { get; init; } = [];

    /// <summary>Readings from the site.</summary>
    public IReadOnlyList<Measurement> Measured { get; init; } = [];

    /// <summary>Findings that a named person took upon themselves.</summary>
    public IReadOnlyList<Acceptance> Accepted { get; init; } = [];
}

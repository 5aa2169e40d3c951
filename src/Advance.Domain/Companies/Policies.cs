using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>Settings of the company file. The defaults are common practice, without a source.</summary>
public sealed record Policies
{
    /// <summary>The settings shipped.</summary>
    public static readonly Policies Default = new();

    /// <summary><c>spare-mics</c>: of each kind of microphone.</summary>
    public Share SpareMics { get; init; } = new(10, 1);

    /// <summary><c>spare-di</c>: of each kind of direct box.</summary>
    public Share SpareDirectBoxes { get; init; } = new(10, 1);

    /// <summary><c>spare-stands</c>: of each size of stand.</summary>
    public Share SpareStands { get; init; } = new(10, 1);

    /// <summary><c>free-ports</c>: of each stage box, in and out.</summary>
    public Share FreePorts { get; init; } = new(10, 2);

    /// <summary><c>weight-margin</c>: what is added to a weight, by how it is known.</summary>
    public WeightMargins WeightMargin { get; init; } = new(0, 5, 10);

    /// <summary><c>cables</c>: how long a lead must be, and how leads are put together.</summary>
    public CablePolicies Cables { get; init; } = CablePolicies.Default;

    /// <summary><c>edge-height</c>: from what height on an edge of a stage wants a rail.</summary>
    public Length EdgeHeight { get; init; } = Length.FromMeters(0.38);

    /// <summary><c>stack-strap</c>: beyond what a stack that is not joined wants a strap.</summary>
    public StrapLimit StackStrap { get; init; } = new(2, Length.FromMeters(1.5));

    /// <summary><c>temperature</c>: of the air, where the gig does not say.</summary>
    public Temperature Temperature { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary><c>fill-offset</c>: by how much fills start later than their way alone asks for.</summary>
    public Duration FillOffset { get; init; } = Duration.FromSeconds(0.005);

    /// <summary><c>delay-offset</c>: by how much delay stacks start later than their way alone asks for.</summary>
    public Duration DelayOffset { get; init; } = Duration.FromSeconds(0.010);

    /// <summary><c>start-muted</c>: whether outputs that drive loudspeakers are muted when they are switched on.</summary>
    public bool StartMuted { get; init; } = true;

    /// <summary><c>subnet</c>: the network, where the gig does not say.</summary>
    public Subnet Subnet { get; init; } = new(NetworkAddress.Of(192, 168, 10, 0), 24);

    /// <summary><c>control-units</c>: how many units are planned on one line of lighting control; the standard allows 32.</summary>
    public int ControlUnits { get; init; } = 24;

    /// <summary><c>free-slots</c>: of each universe of lighting control, what stays free while there is room elsewhere.</summary>
    public Share FreeSlots { get; init; } = new(10, 0);

    /// <summary><c>spare-terminators</c>: of those that end lines of lighting control.</summary>
    public Share SpareTerminators { get; init; } = new(0, 1);
}

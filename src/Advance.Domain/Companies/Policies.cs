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

    /// <summary><c>idle-share</c>: what wedges and backline draw while nobody plays, in per cent of their draw in use, 0 to 100.</summary>
    public double IdleShare { get; init; } = 10;

    /// <summary><c>unknown-backline</c>: for each thing of an act whose draw nobody gave, but no more of them than there are players.</summary>
    public Power UnknownBackline { get; init; } = Power.FromWatts(500);

    /// <summary><c>backline-plug</c>: what an act's own things plug into; empty where unknown.</summary>
    public string BacklinePlug { get; init; } = "";

    /// <summary><c>unknown-leakage</c>: of a unit whose leakage nobody gave.</summary>
    public ElectricCurrent UnknownLeakage { get; init; } = ElectricCurrent.FromAmperes(0.001);

    /// <summary><c>unknown-inrush</c>: of a unit whose inrush nobody gave, peak.</summary>
    public ElectricCurrent UnknownInrush { get; init; } = ElectricCurrent.FromAmperes(20);

    /// <summary><c>circuit-use</c>: a circuit or a service that carries more than this share of its rating is a concern, in per cent.</summary>
    public double CircuitUse { get; init; } = 90;

    /// <summary><c>phase-spread</c>: largest line less the mean, in per cent of the mean.</summary>
    public double PhaseSpread { get; init; } = 20;

    /// <summary><c>generator-line</c>: a line of a generator that carries more than this share of its rated current is a concern, in per cent.</summary>
    public double GeneratorLine { get; init; } = 80;

    /// <summary><c>generator-mean</c>: what a generator may give on average while it runs, in per cent of its prime power.</summary>
    public double GeneratorMean { get; init; } = 70;

    /// <summary><c>generator-least</c>: hours in which a generator gives less are counted, in per cent of its prime power.</summary>
    public double GeneratorLeast { get; init; } = 30;

    /// <summary><c>generator-fuel</c>: how much fuel is brought, in per cent of what the hours burn.</summary>
    public double GeneratorFuel { get; init; } = 130;

    /// <summary><c>generator-unbalance</c>: negative over positive sequence, in per cent, where its maker does not say.</summary>
    public double GeneratorUnbalance { get; init; } = 15;

    /// <summary><c>unknown-third-harmonic</c>: of a unit whose third harmonic nobody gave, in per cent of the fundamental.</summary>
    public double UnknownThirdHarmonic { get; init; } = 60;

    /// <summary><c>unknown-angle</c>: how far a unit may lag or lead of which neither displacement nor power factor is known.</summary>
    public Angle UnknownAngle { get; init; } = Angle.FromDegrees(37);

    /// <summary><c>drop-lighting</c>: voltage drop allowed up to lights, in per cent.</summary>
    public double DropLighting { get; init; } = 3;

    /// <summary><c>drop-other</c>: voltage drop allowed up to everything else, in per cent.</summary>
    public double DropOther { get; init; } = 5;

    /// <summary><c>cables</c>: how long a lead must be, and how leads are put together.</summary>
    public CablePolicies Cables { get; init; } = CablePolicies.Default;

    /// <summary><c>stage-mains</c>: how far what an act plays may stand from the nearest box or strip, so that one lead reaches.</summary>
    public Length StageMains { get; init; } = Length.FromMeters(8);

    /// <summary><c>edge-height</c>: from what height on an edge of a stage wants a rail.</summary>
    public Length EdgeHeight { get; init; } = Length.FromMeters(0.38);

    /// <summary><c>rigging</c>: how what hangs is reckoned.</summary>
    public RiggingPolicies Rigging { get; init; } = RiggingPolicies.Default;

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

    /// <summary><c>spare-mic-leads</c>: of each length.</summary>
    public Share SpareMicLeads { get; init; } = new(15, 2);

    /// <summary><c>spare-mains-leads</c>: of each length of mains and link leads up to 20 A.</summary>
    public Share SpareMainsLeads { get; init; } = new(10, 2);

    /// <summary><c>spare-lighting-leads</c>: of each length of lighting-control leads.</summary>
    public Share SpareLightingLeads { get; init; } = new(10, 2);

    /// <summary><c>spare-adapters</c>: of each kind in use.</summary>
    public Share SpareAdapters { get; init; } = new(0, 1);

    /// <summary><c>spare-boxes</c>: of each kind of self-powered loudspeaker.</summary>
    public OnePer SpareBoxes { get; init; } = new(8, 3);

    /// <summary><c>spare-fixtures</c>: of each kind, in a rig of more than <c>spare-fixtures-over</c>.</summary>
    public Share SpareFixtures { get; init; } = new(5, 1);

    /// <summary><c>spare-fixtures-over</c>: a rig of so many fixtures carries no spare.</summary>
    public int SpareFixturesOver { get; init; } = 10;

    /// <summary><c>spare-radio</c>: of each kind of radio microphone or pack.</summary>
    public OnePer SpareRadios { get; init; } = new(6);

    /// <summary><c>lifts</c>: what people may lift together.</summary>
    public LiftLimits Lifts { get; init; } = LiftLimits.Default;

    /// <summary><c>truck</c>: how full one may be.</summary>
    public LoadLimits Truck { get; init; } = LoadLimits.Default;

    /// <summary><c>corner-clearance</c>: kept all round what is turned in a corner.</summary>
    public Length CornerClearance { get; init; } = Length.FromMeters(0.05);

    /// <summary><c>tasks</c>: how long they take.</summary>
    public TaskTimes Tasks { get; init; } = TaskTimes.Default;

    /// <summary><c>changeover</c>: how long one takes.</summary>
    public ChangeoverTimes Changeover { get; init; } = ChangeoverTimes.Default;

    /// <summary><c>breaks</c>: when people must eat.</summary>
    public MealBreaks Breaks { get; init; } = MealBreaks.Default;

    /// <summary><c>control-units</c>: how many units are planned on one line of lighting control; the standard allows 32.</summary>
    public int ControlUnits { get; init; } = 24;

    /// <summary><c>free-slots</c>: of each universe of lighting control, what stays free while there is room elsewhere.</summary>
    public Share FreeSlots { get; init; } = new(10, 0);

    /// <summary><c>spare-terminators</c>: of those that end lines of lighting control.</summary>
    public Share SpareTerminators { get; init; } = new(0, 1);

    /// <summary><c>standing</c>: how safely things stand.</summary>
    public StandingPolicies Standing { get; init; } = StandingPolicies.Default;

    /// <summary><c>lead-times</c>: how many days before the show papers must be there.</summary>
    public LeadTimes LeadTimes { get; init; } = LeadTimes.Default;

    /// <summary><c>hire-days</c>: how long hired things are kept beside the days of the gig.</summary>
    public HireDays HireDays { get; init; } = HireDays.Default;
}

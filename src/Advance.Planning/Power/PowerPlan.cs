using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Services, distributions and circuits, and what hangs on them.</summary>
/// <param name="Pieces">What was added: distributions, adapters.</param>
/// <param name="Things">What is drawn.</param>
/// <param name="Links">Feeders, leads from outlets, and links from unit to unit.</param>
/// <param name="Figures">Currents in use and at most, of each circuit, distribution and service.</param>
/// <param name="Chosen">Which outlet feeds which load.</param>
public sealed record PowerPlan(
    IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things, IReadOnlyList<Link> Links, IReadOnlyList<Stated> Figures, Choices Chosen)
{
    /// <summary>Services of the venue, in its order.</summary>
    public IReadOnlyList<SupplyPoint> Services { get; init; } = [];

    /// <summary>Real and apparent power of each service, in the same order.</summary>
    public IReadOnlyList<ServicePower> Powers { get; init; } = [];

    /// <summary>Services that are generators and that something of the show hangs on, in the order of the venue.</summary>
    public IReadOnlyList<GeneratorPlan> Generators { get; init; } = [];

    /// <summary>What several of the venue's services hang on together, in its order.</summary>
    public IReadOnlyList<SupplyPoint> Upstreams { get; init; } = [];

    /// <summary>Distributions, in the order written.</summary>
    public IReadOnlyList<SupplyPoint> Distributions { get; init; } = [];

    /// <summary>Outlets and links of distributions that feed other distributions.</summary>
    public IReadOnlyList<SupplyPoint> Feeders { get; init; } = [];

    /// <summary>Outlets in use, by distribution and number.</summary>
    public IReadOnlyList<Circuit> Circuits { get; init; } = [];

    /// <summary>
    /// In which order devices are closed, at load-in and after a power failure. The order rests on which outlet feeds what, and so on
    /// <see cref="RestsOn"/>.
    /// </summary>
    public IReadOnlyList<SwitchOnStep> SwitchOn { get; init; } = [];

    /// <summary>What found no outlet.</summary>
    public IReadOnlyList<UnfedChain> Unfed { get; init; } = [];

    /// <summary>Circuits fixed by hand that could not be kept, or name nothing that draws current.</summary>
    public IReadOnlyList<GivenUpCircuit> GivenUp { get; init; } = [];

    /// <summary>
    /// Circuits fixed by hand; were they free, everything would have an outlet and nothing would carry too much. One if one is enough, else a set
    /// of which none can be left out; empty where all is well, or freeing circuits does not help.
    /// </summary>
    public IReadOnlyList<CircuitRow> ToFree { get; init; } = [];

    /// <summary>Circuits fixed by hand that make the fullest rating fuller than it need be; null where none cost so much.</summary>
    public CostlyCircuits? Costly { get; init; }

    /// <summary>What is counted for kit that is not chosen yet, in the order written.</summary>
    public IReadOnlyList<PowerAllowance> Allowances { get; init; } = [];

    /// <summary>What is wrong with the feeds of distributions.</summary>
    public IReadOnlyList<FeedFault> Faults { get; init; } = [];

    /// <summary>
    /// Every place that limits a current of its own: services, outlets, links, and inlets that may carry less than what feeds them lets
    /// through. An inlet behind a device of its own rating is that device's business.
    /// </summary>
    public IEnumerable<SupplyPoint> Limits => Upstreams.Concat(Services).Concat(Feeders).Concat(Circuits.Select(circuit => circuit.Outlet))
        .Concat(Distributions.Where(point => point.Loom.Count == 0 && point.Limit.Value is { } own && !(point.FedBy?.Limit.Value is { } before && before.Amperes <= own.Amperes)));

    /// <summary>Whether nothing better exists than the outlets chosen.</summary>
    public bool IsProven { get; init; } = true;

    /// <summary>How far the worst use of a rating may be above the least that any choice could reach, as a share of that; 0 where it is proven, or light.</summary>
    public double Gap { get; init; }

    /// <summary>The step that switches on a place of the supply; null where nothing in use hangs on it, or several steps do.</summary>
    public SwitchOnStep? StepOf(SupplyPoint point) => SwitchOn.FirstOrDefault(step => point.Upwards.Any(above => above.Address == step.Device.Address));

    /// <summary>The services that the show hangs on, in the order of the venue.</summary>
    public IEnumerable<SupplyPoint> ServicesInUse => Services.Where(point => Distributions.Any(fed => fed.FedBy?.Address == point.Address));

    /// <summary>The open questions behind the choice as a whole: all loads compete for the same outlets.</summary>
    public Domain.Facts.Doubts RestsOn => Circuits.Aggregate(Domain.Facts.Doubts.None, (sum, circuit) => sum.With(circuit.Use.InUse.RestsOn));
}

using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a mains lead carries where it lies.</summary>
/// <param name="Run">The run it is part of.</param>
/// <param name="Lead">Its kind.</param>
/// <param name="Device">The device before it; null where nobody knows of one.</param>
/// <param name="InUse">What comes through.</param>
/// <param name="AtMost">The same, at most.</param>
/// <param name="Bare">What it carries alone, stretched out, in the air there is.</param>
/// <param name="Carries">What it carries as it lies: grouped, coiled, covered, with harmonics.</param>
/// <param name="Bites">What takes the most of it, and how much; empty where nothing does.</param>
/// <param name="Place">Where that is: a way, a loom, the coil, the run itself for harmonics; empty where nothing takes any.</param>
public sealed record LeadCapacity(
    Run Run,
    Kind Lead,
    SupplyPoint? Device,
    Figure<ElectricCurrent> InUse,
    Figure<ElectricCurrent> AtMost,
    Figure<ElectricCurrent> Bare,
    Figure<ElectricCurrent> Carries,
    string Bites,
    string Place)
{
    /// <summary>Its name in the plan.</summary>
    public Address Address => Address.Of("power") / "lead" / Run.Label / Lead.Id;

    /// <summary>Whether its terminations govern what it carries alone, and not the cable: only in North America.</summary>
    public bool IsByTerminations { get; init; }

    internal IEnumerable<Stated> Figures =>
        [Stated.Of(Address / "carries", $"{Run.Label}, what it carries as it lies, {Lead.Id}", Carries)];
}

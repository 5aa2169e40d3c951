namespace Advance.Planning;

/// <summary>The voltages that arrive at a distribution fed on more than one leg, on the feeders as picked.</summary>
/// <param name="Point">The distribution.</param>
/// <param name="Legs">Each leg to neutral.</param>
public sealed record PointVoltage(SupplyPoint Point, IReadOnlyList<LegVoltage> Legs)
{
    /// <summary>Their numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures => Legs.SelectMany(leg => new[]
    {
        Stated.Of(Point.Address / leg.Leg / "drop", $"{Point.Name} {leg.Leg}, voltage drop with everything in use", leg.Drop),
        Stated.Of(Point.Address / leg.Leg / "drop-alone", $"{Point.Name} {leg.Leg}, voltage drop with this leg alone in use", leg.Alone),
        Stated.Of(Point.Address / leg.Leg / "rise", $"{Point.Name} {leg.Leg}, highest voltage above the nominal, with {string.Join(" and ", leg.RiseOn)} on", leg.Rise),
    });
}

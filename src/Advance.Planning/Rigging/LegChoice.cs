using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Chooses what the legs of a bridle are made of, so that its hook comes to hang where it is wanted.</summary>
internal sealed class LegChoice(SteelStock stock, IReadOnlyList<RiggingPoint> anchors, RiggingPoint wanted)
{
    // The nearest few of each leg, put together every way.
    private const int Near = 8;

    private readonly List<(IReadOnlyList<LegMade> Legs, double Off)> all = [.. All(stock, anchors, wanted)];

    /// <summary>The legs of the fewest parts that hang the hook within a distance; of those alike, the nearest. Null where none do.</summary>
    /// <param name="within">m.</param>
    public IReadOnlyList<LegMade>? Within(double within) => all.Where(one => one.Off <= within + 1e-9)
        .OrderBy(one => one.Legs.Sum(leg => leg.Parts.Count)).ThenBy(one => Math.Round(one.Off, 4, MidpointRounding.AwayFromZero)).ThenBy(one => string.Join('|', one.Legs.Select(leg => string.Join('+', leg.Parts.Select(part => part.Id)))), StringComparer.Ordinal)
        .Select(one => one.Legs).FirstOrDefault();

    /// <summary>How near the hook can be hung at best, m; null where legs of this stock do not meet.</summary>
    public double? Nearest => all.Count == 0 ? null : all.Min(one => one.Off);

    private static IEnumerable<(IReadOnlyList<LegMade> Legs, double Off)> All(SteelStock stock, IReadOnlyList<RiggingPoint> anchors, RiggingPoint wanted)
    {
        var each = anchors.Select(anchor => stock.Near((anchor - wanted).Length).Take(Near).ToList()).ToList();
        IEnumerable<IReadOnlyList<LegMade>> together = [[]];
        foreach (var leg in each)
        {
            together = together.SelectMany(_ => leg, (before, one) => (IReadOnlyList<LegMade>)[.. before, one]);
        }

        return from legs in together
               where SteelStock.HasAll(legs)
               let apex = BridleGeometry.ApexOf(anchors, [.. legs.Select(leg => leg.Length)])
               where apex is not null
               select (legs, (apex.Value - wanted).Length);
    }
}

using Advance.Domain.Facts;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>The steels, adjusting chains and shackles of a stock, put together to lengths that are wanted.</summary>
internal sealed class SteelStock
{
    // More joints than that nobody makes overhead.
    private const int MostSteels = 3;

    private readonly List<Kind> steels;
    private readonly List<Kind> chains;
    private readonly Kind? shackle;

    /// <param name="stock">Of the shop.</param>
    /// <param name="bears">What each part must be rated for, kg; where nothing is, anything counts, and the rules tell.</param>
    public SteelStock(Stock stock, double bears)
    {
        var parts = stock.Kinds.Values.Where(kind => kind.Lifting is not null && HasSome(kind)).OrderBy(kind => kind.Id, StringComparer.Ordinal).ToList();
        steels = Strong(parts.Where(kind => kind.Lifting is { Made: LiftingKind.Steel, Length.IsKnown: true } && kind.Lifting.Length.Value.Value.Meters > 0), bears);
        chains = Strong(parts.Where(kind => kind.Lifting is { Made: LiftingKind.Chain, Length.IsKnown: true, Step.IsKnown: true } && kind.Lifting.Step.Value.Value.Meters > 0), bears);
        shackle = Strong(parts.Where(kind => kind.Lifting is { Made: LiftingKind.Shackle }), bears).OrderBy(RatingOf).ThenBy(kind => kind.Id, StringComparer.Ordinal).FirstOrDefault();
        Doubts = parts.Aggregate(Doubts.None, (sum, kind) => sum.With(Doubts.Of(kind.Owned.Doubt)).With(Doubts.Of(kind.Lifting!.Rating.Doubt)).With(Doubts.Of(kind.Lifting.Length?.Doubt)).With(Doubts.Of(kind.Lifting.Step?.Doubt)));
        Strings = [.. Bunches(0, 0).Where(bunch => bunch.Count > 0)];
    }

    /// <summary>The open questions about what there is.</summary>
    public Doubts Doubts { get; }

    private IReadOnlyList<IReadOnlyList<Kind>> Strings { get; }

    private double Joint => shackle?.Lifting?.Length is { IsKnown: true } length ? length.Value.Meters : 0;

    /// <summary>Everything that can be made near a length, the nearest first; of those alike, of the fewest parts.</summary>
    /// <param name="length">Wanted, m.</param>
    public IReadOnlyList<LegMade> Near(double length) =>
    [
        .. Strings.SelectMany(steel => Made(steel, length))
            .OrderBy(made => Math.Round(Math.Abs(made.Length - length), 4, MidpointRounding.AwayFromZero))
            .ThenBy(made => made.Parts.Count)
            .ThenBy(made => string.Join('+', made.Parts.Select(part => part.Id)), StringComparer.Ordinal),
    ];

    /// <summary>The steels that are at least so long and at most so long together: the fewest, of those the shortest; null where there are none.</summary>
    /// <param name="least">m.</param>
    /// <param name="most">m.</param>
    public LegMade? Between(double least, double most) => Strings.Select(steel => new LegMade(steel, Bare(steel) + (Joint * (steel.Count + 1))) { Shackle = shackle })
        .Where(made => made.Length >= least - 1e-9 && made.Length <= most + 1e-9)
        .OrderBy(made => made.Parts.Count).ThenBy(made => made.Length).ThenBy(made => string.Join('+', made.Parts.Select(part => part.Id)), StringComparer.Ordinal)
        .FirstOrDefault();

    /// <summary>Whether the shop has as many of each as some legs take together.</summary>
    public static bool HasAll(IEnumerable<LegMade> legs) => legs.SelectMany(leg => leg.Parts).GroupBy(part => part.Id, StringComparer.Ordinal)
        .All(group => group.Count() <= group.First().Owned.Or(int.MaxValue) - group.First().OutForRepair);

    // Without a chain, and with each chain to the links on either side of what is left.
    private IEnumerable<LegMade> Made(IReadOnlyList<Kind> steel, double length)
    {
        var bare = Bare(steel);
        yield return new LegMade(steel, bare + (Joint * (steel.Count + 1))) { Shackle = shackle };
        foreach (var chain in chains)
        {
            var (step, most, rest) = (chain.Lifting!.Step!.Value.Value.Meters, chain.Lifting.Length!.Value.Value.Meters, length - bare - (Joint * (steel.Count + 2)));
            foreach (var links in new[] { Math.Floor(rest / step), Math.Floor(rest / step) + 1 }.Where(links => links >= 1 && links * step <= most + 1e-9))
            {
                yield return new LegMade([.. steel, chain], bare + (Joint * (steel.Count + 2)) + (links * step)) { Shackle = shackle, ChainUsed = links * step };
            }
        }
    }

    private static double Bare(IReadOnlyList<Kind> steel) => steel.Sum(one => one.Lifting!.Length!.Value.Value.Meters);

    // Every bunch of up to three, longest first, none twice.
    private IEnumerable<IReadOnlyList<Kind>> Bunches(int from, int used)
    {
        yield return [];
        for (var index = from; index < steels.Count && used < MostSteels; index++)
        {
            foreach (var rest in Bunches(index, used + 1))
            {
                yield return [.. rest.Prepend(steels[index]).OrderByDescending(one => one.Lifting!.Length!.Value.Value.Meters).ThenBy(one => one.Id, StringComparer.Ordinal)];
            }
        }
    }

    private static List<Kind> Strong(IEnumerable<Kind> kinds, double bears)
    {
        var all = kinds.ToList();
        var strong = all.Where(kind => RatingOf(kind) >= bears).ToList();
        return strong.Count > 0 ? strong : all;
    }

    private static double RatingOf(Kind kind) => kind.Lifting!.Rating.Is(out var rating) ? rating.Kilograms : 0;

    private static bool HasSome(Kind kind) => kind.Owned.Or(0) - kind.OutForRepair > 0;
}

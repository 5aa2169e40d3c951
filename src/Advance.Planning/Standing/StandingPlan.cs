namespace Advance.Planning;

/// <summary>Everything that stands, and what it stands up to.</summary>
/// <param name="Site">Wind and ground.</param>
/// <param name="Items">Stacks, lighting stands, and other things whose kind says how they stand; what is low is left out.</param>
/// <param name="Cloths">What hangs in the open and wind finds.</param>
public sealed record StandingPlan(StandingSite Site, IReadOnlyList<StandingItem> Items, IReadOnlyList<ClothPlan> Cloths)
{
    /// <summary>Every number, under its address.</summary>
    public IReadOnlyList<Stated> Figures { get; } = [.. Items.SelectMany(item => item.Figures), .. Cloths.SelectMany(cloth => cloth.Figures)];

    /// <summary>One for each thing as written: of a mirrored pair the one that stands less wind, or tips sooner.</summary>
    public IEnumerable<StandingItem> Worst => Items.GroupBy(item => item.Written).Select(pair => pair.MinBy(Rank)!);

    private static double Rank(StandingItem item) => item.Limit?.Value?.MetersPerSecond ?? item.Whole.WorstTipping?.Tipping?.Value ?? 0;
}

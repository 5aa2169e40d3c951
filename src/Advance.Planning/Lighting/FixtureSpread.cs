using Advance.Domain.Companies;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Where the fixtures of a position are: side by side around its middle, numbered the way the company counts.</summary>
internal static class FixtureSpread
{
    private const string Key = "fixtures";
    private const string FromStageLeft = "from SL";

    // Where nobody wrote the size of a fixture down.
    private const double UsualWidth = 0.4;

    /// <summary>Whether the company counts fixtures from stage left; it counts from stage right where it does not say.</summary>
    public static bool CountsFromStageLeft(Company company) => company.Numbering.GetValueOrDefault(Key) == FromStageLeft;

    /// <summary>How far from the middle each fixture is towards stage left, in metres, in the order of their numbers.</summary>
    /// <param name="position">What carries them.</param>
    /// <param name="carrier">The kind of stand, pipe or truss; null where not known.</param>
    /// <param name="fixtures">The kind of each fixture; null where not known.</param>
    /// <param name="stock">Where what comes with the carrier is looked up.</param>
    /// <param name="fromStageLeft">Which way they are counted.</param>
    public static IReadOnlyList<double> Of(Position position, Kind? carrier, IReadOnlyList<Kind?> fixtures, Stock stock, bool fromStageLeft)
    {
        var widest = fixtures.Select(WidthOf).DefaultIfEmpty(UsualWidth).Max();
        var along = Length(position, carrier, stock) is { } length ? length / fixtures.Count : widest;
        var first = -along * (fixtures.Count - 1) / 2;
        return [.. Enumerable.Range(0, fixtures.Count).Select(index => (first + (along * index)) * (fromStageLeft ? -1 : 1))];
    }

    // As long as was written, else as the bar that comes with the stand.
    private static double? Length(Position position, Kind? carrier, Stock stock)
    {
        if (position.Length is { } given)
        {
            return given.Is(out var length) ? length.Meters : null;
        }

        var bars = carrier?.With.Select(item => stock.Find(item.Item)).Where(IsBar).Select(WidthOf).ToList();
        return bars is { Count: > 0 } ? bars.Max() : null;
    }

    // A bar is much longer than it is deep.
    private static bool IsBar(Kind? kind) =>
        kind?.Size is { } given && given.Is(out var size) && size.Width.Meters >= 4 * size.Depth.Meters;

    private static double WidthOf(Kind? kind) => kind?.Size is { } given && given.Is(out var size) ? size.Width.Meters : UsualWidth;
}

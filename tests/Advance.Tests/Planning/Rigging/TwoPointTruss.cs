using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>A show of one truss of 9 m, 4 m up, on hoists at two points 7 m apart.</summary>
internal static class TwoPointTruss
{
    /// <summary>A hall whose points are straight over 1 m and 8 m of it.</summary>
    public const string Hall = """
        venue: A hall
        roof-points:
          P1: {place: SR 3.5 m US 2 m, height: 8 m, limit: 600 kg}
          P2: {place: SL 3.5 m US 2 m, height: 8 m, limit: 600 kg}
        """;

    /// <summary>Worked out.</summary>
    /// <param name="stock">Has <c>truss-3</c> and <c>hoist</c>.</param>
    /// <param name="venue">Has P1 and P2.</param>
    /// <param name="load">What it carries; empty for nothing.</param>
    /// <param name="at">Where it is held, m; null for 1 and 8.</param>
    /// <param name="keys">One more line of the truss.</param>
    /// <param name="first">More keys of its first pick, after a comma.</param>
    /// <param name="middle">Where its middle is across.</param>
    public static Plan Of(string stock, string venue = Hall, string load = "", (double First, double Second)? at = null, string keys = "", string first = "", string middle = "SL 0 m")
    {
        var (one, two) = at ?? (1, 8);
        return SmallShow.Of(
            FormattableString.Invariant($$"""
                gig: Two points
                day: Sat 12 Sep 2026
                stock: stock.yaml
                venue: venue.yaml
                stage: {size: 10 x 6 m, height: 0 m above floor}
                rigging:
                  trusses:
                    T1:
                      item: truss-3
                      length: 9 m
                      place: {{middle}} US 2 m
                      trim: 4 m above floor
                      {{keys}}
                      picks:
                        - {along: {{one}} m, hoist: hoist, point: P1{{first}}}
                        - {along: {{two}} m, hoist: hoist, point: P2}
                  loads: [{{load}}]
                """),
            stock,
            venue);
    }
}

using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>A truss of 9 m on a point and on a bridle between two points 3 m apart and 8 m high, with steels and chains to make legs of.</summary>
internal static class BridleShow
{
    private const string Gig = """
        gig: On a bridle
        day: Sat 12 Sep 2026
        stock: stock.yaml
        venue: venue.yaml
        stage: {size: 10 x 6 m, height: 0 m above floor}
        rigging:
          trusses:
            T1:
              item: truss-3
              length: 9 m
              place: SL 0 m US 2 m
              trim: 4 m above floor
              people-below: at rest
              picks:
                - {along: 0.5 m, hoist: hoist, point: P1}
                - {along: 7.5 m, hoist: hoist, point: B1}
          bridles:
            B1: {points: [P2, P3], BRIDLE}
        """;

    private const string Stock = """
        kinds:
          truss-3:
            name: Truss 3 m
            owned: 12
            weight: 18 kg weighed
            truss: {length: 3 m, bending-stiffness: 1700 kNm2, moment: 18 kNm, shear: 11 kN}
          hoist:
            name: Hoist 500 kg
            owned: 8
            weight: 45 kg weighed
            hoist: {lifts: 500 kg, holds: 500 kg}
          steel-1: {name: Steel 1 m, owned: STEELS, weight: 1 kg weighed, lifting: {made: steel, rating: 2000 kg, length: 1 m, stretch: 0.4 %}}
          steel-half: {name: Steel 0.5 m, owned: STEELS, weight: 1 kg weighed, lifting: {made: steel, rating: 2000 kg, length: 0.5 m, stretch: 0.4 %}}
          steel-weak: {name: Steel 0.7 m, owned: STEELS, weight: 1 kg weighed, lifting: {made: steel, rating: 300 kg, length: 0.7 m}}
          chain: {name: Chain 0.9 m, owned: 4, weight: 2 kg weighed, lifting: {made: chain, rating: 2000 kg, length: 0.9 m, step: 45 mm}}
          shackle: {name: Shackle, owned: 40, weight: 0.5 kg weighed, lifting: {made: shackle, rating: 3000 kg, length: 60 mm}}
        """;

    private const string Venue = """
        venue: A hall
        roof-points:
          P1: {place: SR 4 m US 2 m, height: 8 m, limit: 600 kg}
          P2: {place: SL 1.5 m US 2 m, height: 8 m, limit: 300 kg, sideways: 500 kg}
          P3: {place: SL 4.5 m US 2 m, height: 8 m, limit: LIMIT, sideways: 500 kg}
        """;

    /// <summary>Worked out.</summary>
    /// <param name="bridle">Its drop or its legs, and its gear.</param>
    /// <param name="steels">How many of each steel there are.</param>
    /// <param name="limit">Of the bridle's other point.</param>
    public static Plan Of(string bridle, int steels = 12, string limit = "300 kg")
    {
        var gig = Gig.Replace("BRIDLE", bridle, StringComparison.Ordinal);
        var stock = Stock.Replace("STEELS", FormattableString.Invariant($"{steels}"), StringComparison.Ordinal);
        var venue = Venue.Replace("LIMIT", limit, StringComparison.Ordinal);
        return SmallShow.Of(gig, stock, venue);
    }
}

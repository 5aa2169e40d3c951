using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What hangs rests on the open questions about lengths and places: every figure that moves with one was marked.</summary>
public sealed class OpenPlaceTests
{
    private const string Gig = """
        gig: Where nobody is sure
        day: Sat 12 Sep 2026
        stock: stock.yaml
        venue: venue.yaml
        stage: {size: 10 x 6 m, height: 0 m above floor}
        lighting:
          positions:
            LX: {place: 1 m off centre of T1, length: 3 m}
          fixtures:
            - {name: 1-3, item: lamp, position: LX, purpose: wash}
        rigging:
          trusses:
            T1:
              item: truss-3
              length: 9 m
              place: SL 0 m US 2 m
              trim: 4 m above floor
              picks:
                - {along: 0.5 m, hoist: hoist, point: P1, gear: [sling]}
                - {along: 4.5 m, hoist: hoist, point: P4, gear: [sling]}
                - {along: 7.5 m, hoist: hoist, point: B1, gear: [sling]}
          bridles:
            B1: {points: [P2, P3], drop: 1.2 m}
          loads:
            - {truss: T1, what: screen, weight: 80 kg, along: 3 m, offset: 0.1 m}
            - {truss: T1, what: cloth, weight: 20 kg}
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
            hoist: {lifts: 500 kg, holds: 500 kg, limiter: 150 %, speed: 4 m/min}
          sling: {name: Sling, owned: 9, weight: 1 kg weighed, lifting: {made: roundsling, rating: 1000 kg, length: 1 m, stretch: 3 %, breaks-at: 7}}
          lamp: {name: Lamp, owned: 9, weight: 10 kg weighed}
          steel-1: {name: Steel 1 m, owned: 12, weight: 1 kg weighed, lifting: {made: steel, rating: 2000 kg, length: 1 m, stretch: 0.4 %}}
          chain: {name: Chain 0.9 m, owned: 4, weight: 2 kg weighed, lifting: {made: chain, rating: 2000 kg, length: 0.9 m, step: 45 mm}}
          shackle: {name: Shackle, owned: 40, weight: 0.5 kg weighed, lifting: {made: shackle, rating: 3000 kg}}
        """;

    private const string Venue = """
        venue: A hall
        roof-points:
          P1: {place: SR 4 m US 2 m, height: 8 m, limit: 600 kg}
          P2: {place: SL 1.5 m US 2 m, height: 8 m, limit: 600 kg, sideways: 500 kg}
          P3: {place: SL 4.5 m US 2 m, height: 8 m, limit: 600 kg, sideways: 500 kg}
          P4: {place: SL 0 m US 2 m, height: 8 m, limit: 600 kg}
        """;

    public static TheoryData<string, string> Open => new()
    {
        { "length: 9 m", "length: 11 m" },
        { "place: SL 0 m US 2 m\n", "place: SL 0.3 m US 2.2 m\n" },
        { "along: 4.5 m", "along: 4 m" },
        { "along: 7.5 m", "along: 7.2 m" },
        { "along: 3 m", "along: 5 m" },
        { "offset: 0.1 m", "offset: 0.3 m" },
        { "place: 1 m off centre of T1", "place: 2 m off centre of T1" },
        { "drop: 1.2 m", "drop: 1.6 m" },
        { "SL 1.5 m US 2 m, height: 8 m", "SL 1.5 m US 2 m, height: 8.4 m" },
        { "place: SL 4.5 m US 2 m", "place: SL 4.2 m US 2.1 m" },
        { "bending-stiffness: 1700 kNm2", "bending-stiffness: 900 kNm2" },
        { "stretch: 3 %", "stretch: 5 %" },
        { "limiter: 150 %", "limiter: 130 %" },
        { "speed: 4 m/min", "speed: 8 m/min" },
    };

    [Theory]
    [MemberData(nameof(Open))]
    public void A_figure_that_moves_was_marked(string one, string other)
    {
        var (before, after) = (PlanOf(one, one), PlanOf(one, other));
        var values = after.Figures.ToDictionary(stated => stated.Address);
        var moved = before.Figures.Where(stated => stated.Address.Text.StartsWith("rigging", StringComparison.Ordinal) && values.TryGetValue(stated.Address, out var changed) && Said(stated) != Said(changed)).ToList();
        Assert.NotEmpty(moved);
        Assert.Empty(moved.Where(stated => !stated.RestsOn.Any).Select(stated => $"{stated.Address}: {Said(stated)} -> {Said(values[stated.Address])}"));
    }

    // The first value, or another in its place, to be confirmed.
    private static Plan PlanOf(string one, string other)
    {
        var fits = $"{other.TrimEnd()} TBC venue{(other.EndsWith('\n') ? "\n" : "")}";
        string Edit(string text) => text.Replace(one, fits, StringComparison.Ordinal);
        return SmallShow.Of(Edit(Gig), Edit(Stock), Edit(Venue));
    }

    private static string Said(Stated stated) => stated.Value is { } value ? Speech.Metric.Say(value) : "unknown";
}

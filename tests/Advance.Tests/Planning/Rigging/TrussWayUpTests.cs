using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What truss of three chords bears, hung as its maker's figures are for, turned over, and when nobody knows. No source: what turns over changes sides.</summary>
public sealed class TrussWayUpTests
{
    private const string Both = "moment: 18 kNm, hogging-moment: 9 kNm";

    [Theory]
    [InlineData("chords: 3, apex: up, " + Both, "", 18.0, 9.0)]
    [InlineData("chords: 3, apex: up, " + Both, "apex: up", 18.0, 9.0)]
    [InlineData("chords: 3, apex: up, " + Both, "apex: down", 9.0, 18.0)]
    [InlineData("chords: 3, apex: down, " + Both, "apex: up", 9.0, 18.0)]
    [InlineData("chords: 3, apex: up, " + Both, "apex: TBC rigger", 9.0, 9.0)]
    [InlineData("chords: 3, " + Both, "apex: up", 9.0, 9.0)]
    [InlineData("chords: 3, moment: 18 kNm", "", 18.0, null)]
    [InlineData("chords: 3, apex: up, moment: 18 kNm", "apex: down", null, 18.0)]
    [InlineData("chords: 4, moment: 18 kNm", "", 18.0, 18.0)]
    [InlineData("chords: 4, " + Both, "", 18.0, 9.0)]
    public void Turned_over_sagging_and_hogging_change_places(string maker, string hung, double? sagging, double? hogging)
    {
        var truss = Of(maker, hung);

        Assert.Equal(sagging, KiloNewtonMetres(truss.Sagging.Allowed.Value));
        Assert.Equal(hogging, KiloNewtonMetres(truss.Hogging.Allowed.Value));
        Assert.Equal(hung.Contains("TBC", StringComparison.Ordinal), truss.Sagging.Allowed.RestsOn.Any);
    }

    private static double? KiloNewtonMetres(Torque? moment) => moment is { } known ? Math.Round(known.KilonewtonMeters, 9) : null;

    private static TrussPlan Of(string maker, string hung)
    {
        var stock = $$$"""
            kinds:
              triple: {name: Truss, owned: 12, weight: 18 kg weighed, truss: {length: 3 m, shear: 11 kN, for-used: yes, {{{maker}}}}}
              hoist: {name: Hoist, owned: 8, weight: 45 kg weighed, hoist: {lifts: 500 kg, holds: 500 kg}}
            """;
        var gig = $$"""
            gig: Three chords
            day: Sat 12 Sep 2026
            stock: stock.yaml
            venue: venue.yaml
            stage: {size: 10 x 6 m, height: 0 m above floor}
            rigging:
              trusses:
                T1:
                  item: triple
                  length: 9 m
                  place: SL 0 m US 2 m
                  trim: 4 m above floor
                  {{hung}}
                  picks:
                    - {along: 1 m, hoist: hoist, point: P1}
                    - {along: 8 m, hoist: hoist, point: P2}
            """;
        return SmallShow.Of(gig, stock, "venue: A hall\nroof-points:\n  P1: {place: SR 3.5 m US 2 m, height: 8 m, limit: 600 kg}\n  P2: {place: SL 3.5 m US 2 m, height: 8 m, limit: 600 kg}\n").Rigging.Trusses[0];
    }
}

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

    private static TrussPlan Of(string maker, string hung) => TwoPointTruss.Of(
        $$$"""
        kinds:
          truss-3: {name: Truss, owned: 12, weight: 18 kg weighed, truss: {length: 3 m, shear: 11 kN, for-used: yes, {{{maker}}}}}
          hoist: {name: Hoist, owned: 8, weight: 45 kg weighed, hoist: {lifts: 500 kg, holds: 500 kg}}
        """,
        keys: hung).Rigging.Trusses[0];
}

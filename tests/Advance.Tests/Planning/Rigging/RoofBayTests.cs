using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What hangs in each bay of a roof: sums, no source.</summary>
public sealed class RoofBayTests
{
    private const string Stock = """
        kinds:
          truss-3: {name: Truss, owned: 12, weight: 18 kg weighed, truss: {length: 3 m, moment: 18 kNm, shear: 11 kN}}
          hoist: {name: Hoist, owned: 8, weight: 45 kg weighed, hoist: {lifts: 500 kg, holds: 500 kg}}
        """;

    [Fact]
    public void A_bay_carries_its_points_and_what_others_hung_on_its_beams()
    {
        var plan = Of("P1: {place: SR 3.5 m US 2 m, height: 8 m, limit: 600 kg, beam: One, along: 2 m}", "P2: {place: SL 3.5 m US 2 m, height: 8 m, limit: 600 kg, bay: South}");

        Assert.Equal(["North", "South"], plan.Rigging.Bays.Select(bay => bay.Bay.Name));
        Assert.Equal(plan.Rigging.Points[0].AtRest.Value!.Value.Kilograms + 120, plan.Rigging.Bays[0].All.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(plan.Rigging.Points[1].AtRest.Value!.Value.Kilograms, plan.Rigging.Bays[1].All.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(plan.Rigging.Roof!.Value!.Value.Kilograms + 120, plan.Rigging.Bays.Sum(bay => bay.All.Value!.Value.Kilograms), 1e-9);
    }

    [Fact]
    public void A_point_may_be_in_another_bay_than_its_beam()
    {
        var plan = Of("P1: {place: SR 3.5 m US 2 m, height: 8 m, limit: 600 kg, beam: One, along: 2 m, bay: South}", "P2: {place: SL 3.5 m US 2 m, height: 8 m, limit: 600 kg, bay: South}");

        Assert.Equal(["South"], plan.Rigging.Bays.Select(bay => bay.Bay.Name));
        Assert.Equal(plan.Rigging.Roof!.Value!.Value.Kilograms, plan.Rigging.Bays[0].All.Value!.Value.Kilograms, 1e-9);
    }

    private static Plan Of(string first, string second) => TwoPointTruss.Of(
        Stock,
        $$$"""
        venue: A hall
        roof-points:
          {{{first}}}
          {{{second}}}
        roof-beams: {One: {span: 12 m, bay: North, others: [{what: speaker, along: 3 m, weight: 120 kg}]}}
        roof-bays: {North: {limit: 500 kg}, South: {limit: 500 kg}, Empty: {limit: 500 kg}}
        """,
        "{truss: T1, what: weight, weight: 300 kg, along: 2.5 m}");
}

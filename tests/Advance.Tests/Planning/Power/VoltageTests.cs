using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Voltage drop on leads as picked.</summary>
public sealed class VoltageTests
{
    // BS 7671, Table 4F3B and 4F1B: mV/A/m of two-core cable at 60 °C; a lead's own section of a plan is worked out from IEC 60228, so near.
    [Theory]
    [InlineData("1.5 mm2", 10, 20, 32)]
    [InlineData("2.5 mm2", 16, 50, 19)]
    [InlineData("2.5 mm2", 4, 20, 19)]
    [InlineData("4 mm2", 16, 30, 12)]
    public void A_lead_drops_what_the_tables_of_cords_say(string section, double amperes, double metres, double millivolts)
    {
        var kind = PowerGigs.Lead("16 A blue") with { Cable = PowerGigs.Lead("16 A blue").Cable! with { Section = section, Length = Given.Of(Length.FromMeters(metres), Gigs.Here) } };
        var ohms = LeadResistance.Of(kind.Id, kind.Cable!, kind.At).Value!.Value.Ohms;
        Assert.Equal(millivolts * amperes * metres / 1000, 2 * ohms * amperes, 0.02 * 2 * ohms * amperes);
    }

    [Fact]
    public void A_size_that_no_table_has_is_unknown()
    {
        var kind = PowerGigs.Lead("16 A blue") with { Cable = PowerGigs.Lead("16 A blue").Cable! with { Section = "cat 6" } };
        Assert.Null(LeadResistance.Of(kind.Id, kind.Cable!, kind.At).Value);
    }

    [Fact]
    public void The_drop_to_the_end_of_a_chain_never_falls_when_a_box_is_put_behind() => Gen.Select(Gen.Int[1, 26], Gen.Int[1, 5]).Sample(
        (draw, boxes) =>
        {
            var (shorter, longer) = (Drop(Stack(boxes, draw / 10.0)), Drop(Stack(boxes + 1, draw / 10.0)));
            Assert.True(longer >= shorter, $"{longer} after {shorter}");
        },
        iter: 40);

    [Fact]
    public void A_chain_of_two_drops_on_the_feeder_the_lead_and_the_link()
    {
        // Feeder, lead and link are 20 m of 2.5 mm² each; 4 A come through the first two, 2 A through the link. Their angle is not known, so it
        // is that of the cable: 8.21 ohm per km tinned at 20 °C, 60 °C when hot, and 0.08 ohm per km of reactance.
        var (r, x) = (8.21 * (1 + (0.00393 * 40)) * 0.02, 0.08 * 0.02);
        Assert.Equal(100 * 2 * Math.Sqrt((r * r) + (x * x)) * (4 + 4 + 2) / 230, Drop(Stack(2, 2)), 1e-9);
    }

    [Fact]
    public void Nothing_is_worked_out_where_a_place_is_not_known()
    {
        var brief = Stack(2, 2);
        var nowhere = brief with { Gig = brief.Gig with { Power = brief.Gig.Power with { Services = [] } } };
        Assert.Null(Planner.Plan(nowhere).Voltage.Circuits[0].Drop.Value);
    }

    private static double Drop(Brief brief) => Planner.Plan(brief).Voltage.Circuits.Single().Drop.Value!.Value.Percent;

    private static Brief Stack(int boxes, double draw)
    {
        var brief = PowerGigs.Of([], [0], services: 1, strangers: 0);
        var stack = new Stack("Main", null, Given.Of<Place>(Place.Centre.It, Gigs.Here), null, [new CountedItem(boxes, "speaker")], null, null, Gigs.Here);
        var kind = PowerGigs.Load("speaker", draw, 0, isPhasor: false) with { Role = Role.Loudspeaker };
        return brief with { Gig = brief.Gig with { Sound = brief.Gig.Sound with { Stacks = [stack] } }, Stock = new(brief.Stock.Kinds.Append(new("speaker", kind)).ToDictionary(StringComparer.Ordinal)) };
    }
}

using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Planning;
using Advance.Tests.Workings;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning;

public sealed class LightingTests
{
    private const string Left = "LX SL";
    private const string Right = "LX SR";

    private static readonly Gen<(int Count, int Slots, int At)> Row =
        Gen.Select(Gen.Int[1, 12], Gen.OneOf(Gen.Const(1), Gen.Const(8), Gen.Const(40), Gen.Const(300)), Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 100])));

    private static readonly Gen<Brief> Briefs = Row.Array[1, 6].Select(Brief);

    [Fact]
    public void The_sample_has_its_addresses_in_the_order_of_the_numbers_and_one_line_through_both_stands()
    {
        var lights = Planner.Plan(SoundGigs.Sample).Lighting;
        Assert.Equal(["1/1", "1/9", "1/17", "1/25", "1/33", "1/41", "1/49", "1/57"], lights.Fixtures.Select(fixture => fixture.At.ToString()));
        var line = Assert.Single(lights.Lines);
        Assert.Equal(8, line.Units.Value);
        Assert.Equal(8, lights.Links.Count);
        Assert.Equal("xlr-5", Assert.Single(lights.Links.Select(link => link.To.Connector).Distinct()));

        // Stands on the floor beside the deck, at 3.2 m above that floor.
        Assert.All(lights.Links, link => Assert.Equal(3.2, link.To.Height, 9));
        Assert.Equal([0, 3.2, 3.2, 3.2, 3.2, 3.2, 3.2, 3.2], lights.Links.Select(link => Math.Round(link.From.Height, 9)));
    }

    [Fact]
    public void No_lead_is_measured_to_a_fixture_that_nobody_knows_the_height_of()
    {
        var sample = SoundGigs.Sample;
        var lighting = sample.Gig.Lighting;
        var positions = lighting.Positions.Select(position => position with { Trim = null }).ToList();
        var plan = Planner.Plan(sample with { Gig = sample.Gig with { Lighting = lighting with { Positions = positions } } });
        var runs = plan.Cables.Runs.Where(run => run.Link.To.Port.Device.StartsWith("Fixture ", StringComparison.Ordinal)).ToList();
        Assert.Equal(2 * plan.Lighting.Fixtures.Count, runs.Count);
        Assert.Equal(["lighting-control", "mains"], runs.Select(run => run.Link.Carries).Distinct().Order(StringComparer.Ordinal));
        Assert.All(runs, run => Assert.Null(run.Needed.Value));
        Assert.All(runs, run => Assert.Empty(run.Leads));
    }

    [Fact]
    public void A_plan_counts_fixtures_the_way_the_company_does()
    {
        var sample = SoundGigs.Sample;
        var company = sample.Company with { Numbering = new Dictionary<string, string>(StringComparer.Ordinal) { ["fixtures"] = "from SL" } };
        var (right, left) = (Across(Planner.Plan(sample)), Across(Planner.Plan(sample with { Company = company })));
        Assert.Equal(right.Order(), right);
        Assert.Equal(left.OrderDescending(), left);

        static IReadOnlyList<double> Across(Plan plan) => [.. plan.Lighting.Fixtures.Where(fixture => fixture.Row.Position == Right).Select(fixture => fixture.Spot!.Value.X)];
    }

    [Fact]
    public void What_is_worked_out_never_overlaps_and_keeps_a_tenth_free() => Briefs.Sample(brief =>
    {
        var fixtures = Planner.Plan(brief).Lighting.Fixtures;
        var free = fixtures.Where(fixture => fixture.Row.Address is null).ToList();
        Assert.All(free, fixture => Assert.NotNull(fixture.Slots));

        // 512 less 10 %, rounded up, is 460: common practice, no source.
        Assert.All(free, fixture => Assert.InRange(fixture.Slots!.Value.Last, 1, 460));
        foreach (var fixture in free)
        {
            var slots = Slots(fixture).ToHashSet();
            Assert.All(fixtures.Where(other => other != fixture), other => Assert.Empty(Slots(other).Intersect(slots)));
        }
    });

    [Fact]
    public void What_somebody_wrote_is_obeyed() => Briefs.Sample(brief =>
    {
        var rows = Planner.Plan(brief).Lighting.Fixtures.Where(fixture => fixture.Row.Address is not null).GroupBy(fixture => fixture.Row);
        Assert.All(rows, row => Assert.Equal(row.Key.Address!.Value.Value, row.First().At));
    });

    [Fact]
    public void The_order_in_which_rows_are_written_does_not_matter() => Briefs.Sample(brief =>
    {
        var lighting = brief.Gig.Lighting;
        var turned = brief with { Gig = brief.Gig with { Lighting = lighting with { Fixtures = [.. lighting.Fixtures.Reverse()] } } };
        Assert.Equal(Addresses(Planner.Plan(brief)), Addresses(Planner.Plan(turned)));
    });

    [Fact]
    public void One_more_fixture_moves_no_other_once_a_plan_was_issued() => Gen.Select(Briefs, Gen.Int[1, 60], Gen.OneOf(Gen.Const(1), Gen.Const(8), Gen.Const(300))).Sample((brief, number, slots) =>
    {
        var issued = Planner.Plan(brief);
        var lighting = brief.Gig.Lighting;
        if (issued.Lighting.Fixtures.Any(fixture => fixture.Number == number))
        {
            return;
        }

        var more = brief with { Gig = brief.Gig with { Lighting = lighting with { Fixtures = [Fixtures(number, 1, slots, 0), .. lighting.Fixtures] } } };
        var next = Planner.Plan(more, issued.Chosen).Lighting.Fixtures.ToDictionary(fixture => fixture.Address, fixture => fixture.At);
        Assert.All(issued.Lighting.Fixtures, fixture => Assert.Equal(fixture.At, next[fixture.Address]));
    });

    [Fact]
    public void A_lead_to_a_height_that_nobody_knows_is_not_measured_to_the_floor()
    {
        var brief = Brief([(4, 8, 0)]);
        var lighting = brief.Gig.Lighting;
        var open = brief with { Gig = brief.Gig with { Lighting = lighting with { Positions = [lighting.Positions[0] with { Trim = null }] } } };
        Assert.All(Planner.Plan(brief).Lighting.Links, link => Assert.NotNull(link.To.Spot));
        Assert.All(Planner.Plan(open).Lighting.Links, link => Assert.Null(link.To.Spot));
    }

    [Fact]
    public void Each_formula_gives_its_result_and_has_an_address_of_its_own()
    {
        List<Stated> stated = [.. Planner.Plan(SoundGigs.Sample).Lighting.Figures, .. Planner.Plan(Brief([(30, 8, 0), (10, 40, 0)])).Lighting.Figures];
        var workings = ByHand.Behind(stated.Select(one => one.How).OfType<Working>()).ToList();
        Assert.True(workings.Count > 10, $"{workings.Count} workings");
        Assert.Empty(workings.Select(ByHand.Fault).OfType<string>());
        var addresses = Planner.Plan(SoundGigs.Sample).Lighting.Figures.Select(one => one.Address).ToList();
        Assert.Equal(addresses.Count, addresses.Distinct().Count());
    }

    private static IEnumerable<(int Universe, int Slot)> Slots(FixturePlan fixture) =>
        fixture is { At: { } at, Slots: { } range } ? Enumerable.Range(range.First, range.Count).Select(slot => (at.Universe, slot)) : [];

    private static IEnumerable<string> Addresses(Plan plan) => plan.Lighting.Fixtures.Select(fixture => $"{fixture.Address} {fixture.At}");

    // Rows in turn on both stands, numbered through; a row with an address is in a universe that grows with its number, so that rows stay apart.
    private static Brief Brief((int Count, int Slots, int At)[] rows)
    {
        var next = 1;
        var fixtures = rows.Select((row, index) =>
        {
            var first = next;
            next += row.Count + 1;
            return Fixtures(first, row.Count, row.Slots, row.At == 0 ? 0 : (index * 1000) + row.At) with { Position = index % 2 == 0 ? Right : Left };
        }).ToList();
        var stand = new Position("LX", new Sides(Side.StageRight, Side.StageLeft), Given.Of<Place>(new Place.AtPoint(Length.FromMeters(-4), Length.FromMeters(1), null), Gigs.Here), null, Given.Of(new HeightFrom(Length.FromMeters(3)), Gigs.Here), Gigs.Here);
        var desk = new Device("control", Given.Of("desk", Gigs.Here), null, null, null, null, Gigs.Here);
        return Gigs.Brief(
            Gigs.Gig() with { Lighting = new Lighting(desk, [stand], fixtures) },
            Gigs.Kind("desk", 1) with { Ports = [Port(PortKind.Output, 40)] },
            Gigs.Kind("light", 99) with
            {
                Ports = [Port(PortKind.Input, 1), Port(PortKind.Link, 1)],
                Modes = [new ModeRow("1", 1), new ModeRow("8", 8), new ModeRow("40", 40), new ModeRow("300", 300)],
            });
    }

    private static FixtureRow Fixtures(int first, int count, int slots, int at) => new(
        new NumberRange(first, first + count - 1),
        Given.Of("light", Gigs.Here),
        Right,
        $"{slots}",
        at == 0 ? null : Given.Of(new ControlAddress((at / 1000) + 1, at % 1000), Gigs.Here),
        "",
        new Mark("gig.yaml", first, 1));

    private static PortRow Port(PortKind port, int count) => new(port, count, "lighting-control", "xlr-5", "", Gigs.Here);
}

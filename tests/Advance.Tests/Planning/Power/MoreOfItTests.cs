using System.Globalization;
using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Power;

/// <summary>More of something that is bad makes it worse, and turns its rule over at a value worked out here.</summary>
public sealed class MoreOfItTests
{
    // IEC 60228 class 5, tinned, at 60 °C: ohm per m. 0.08 ohm per km of reactance. Ze 0.35 ohm and a feeder of 25 m of 6 mm² of the gig.
    private const double Hot = 1 + (0.00393 * 40);
    private const double Lead = 8.21e-3;
    private const double Feeder = 3.39e-3;

    // Three legs of 60 A each, harmonic h of the fundamental: the neutral is 3h of it with all legs on, √(1 + 4h²) with two.
    private const double Line = 60;

    // 0.95 · 230 V / (10 · 16 A): BS 7671, 411.4.4.
    private const double Allowed = 0.95 * 230 / 160;

    [Fact]
    public void A_longer_lead_is_a_higher_loop_and_at_one_length_is_not_cleared()
    {
        var (least, most) = (1.0, 200.0);
        while (most - least > 0.01)
        {
            var middle = (least + most) / 2;
            (least, most) = Loop(middle) <= Allowed ? (middle, most) : (least, middle);
        }

        var lengths = new[] { 5, 20, least - 0.2, most + 0.2, 80 };
        var plans = lengths.Select(Long).ToList();
        Assert.All(plans.Zip(lengths), one => Assert.Equal(Loop(one.Second), LoopOf(one.First), 1e-3));
        Assert.Equal([false, false, false, true, true], plans.Select(plan => plan.Findings.Any(finding => finding.Rule == "power/fault-not-cleared")));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(90)]
    public void More_third_harmonic_is_more_neutral_current(int percent)
    {
        var h = percent / 100.0;
        var expected = Line / Math.Sqrt(1 + (h * h)) * Math.Max(3 * h, Math.Sqrt(1 + (4 * h * h)));
        Assert.Equal(expected, NeutralOf(Harmonic(percent)), 1e-6);
        Assert.True(NeutralOf(Harmonic(percent + 5)) > NeutralOf(Harmonic(percent)));
    }

    // 3h / √(1 + h²) = 63 / 60 of the line: h² = 1.05² / (9 - 1.05²); 37.4 %. With two legs √(1 + 4h²) / √(1 + h²) = 1.05 comes first: h² = (1.05² - 1) / (4 - 1.05²); 18.8 %.
    [Fact]
    public void At_one_harmonic_the_neutral_is_too_much_for_its_connector()
    {
        const double Ratio = 63 / Line;
        var two = 100 * Math.Sqrt(((Ratio * Ratio) - 1) / (4 - (Ratio * Ratio)));
        Assert.False(Has(Harmonic(two - 0.1), "power/neutral-overload"));
        Assert.True(Has(Harmonic(two + 0.1), "power/neutral-overload"));
    }

    // IEC 60364-5-52, table E.52.1: 15 % of the line's whole current is 0.15 / √(1 - 0.15²) of its fundamental. 16 mm² of three lines carries 63 A,
    // by 0.86 no more 60 A.
    [Fact]
    public void At_fifteen_per_cent_the_lead_carries_less_than_its_lines()
    {
        var edge = 100 * 0.15 / Math.Sqrt(1 - (0.15 * 0.15));
        var (below, above) = (Harmonic(edge - 0.05), Harmonic(edge + 0.05));
        Assert.Equal(63, Carries(below), 1e-6);
        Assert.Equal(63 * 0.86, Carries(above), 1e-6);
        Assert.False(Has(below, "power/grouped-or-coiled"));
        Assert.True(Has(above, "power/grouped-or-coiled"));
    }

    // The worked examples of the annex: lines of 39 A with 40 % make a neutral of 46.8 A, and 46.8 / 0.86 = 54.4 A is the cable's; with 50 % the
    // neutral has 58.5 A, and the cable as much.
    [Theory]
    [InlineData(0.40, 54.4)]
    [InlineData(0.50, 58.5)]
    public void Above_a_third_the_cable_is_chosen_by_its_neutral(double share, double cable) =>
        Assert.Equal(63 * 39 / cable, Carries(Harmonic(100 * share / Math.Sqrt(1 - (share * share)))), 0.05);

    [Fact]
    public void More_third_harmonic_leaves_less_to_the_lines_up_to_where_the_annex_counts_the_neutral_alone()
    {
        var carried = new[] { 0, 10, 20, 30, 36, 40, 45, 48 }.Select(percent => Carries(Harmonic(percent))).ToList();
        Assert.Equal(carried.OrderDescending(), carried);
        Assert.True(carried[^1] < 0.7 * carried[0]);
    }

    private static double Loop(double metres)
    {
        var (resistance, reactance) = (2 * Hot * ((25 * Feeder) + (metres * Lead)), 2 * 0.08e-3 * (25 + metres));
        return 0.35 + Math.Sqrt((resistance * resistance) + (reactance * reactance));
    }

    private static double LoopOf(Plan plan) => plan.Protection.Faults.Single(way => way.Name == "PD1 outlet 1").Loop.Value!.Value.Ohms;

    private static double NeutralOf(Plan plan) => plan.Power.Distributions[0].Neutral!.InUse.Current.Value!.Value.Amperes;

    private static double Carries(Plan plan) => plan.Protection.Leads.Single(lead => lead.Lead.Id == "feeder-63").Carries.Value!.Value.Amperes;

    private static bool Has(Plan plan, string rule) => plan.Findings.Any(finding => finding.Rule == rule && (finding.Where.Text.Contains("PD1-feed", StringComparison.Ordinal) || !finding.Where.Text.Contains("lies", StringComparison.Ordinal)));

    // One lead of that length from a box without residual-current devices.
    private static Plan Long(double metres) => Plan(
        "shop-power",
        "venue-loop-bare.yaml",
        stock => stock.Replace("length: 20 m\n    section: 2.5 mm2\n    cores: 3\n    rating: 16 A\n  lead-iec", string.Create(CultureInfo.InvariantCulture, $"length: {metres:0.###} m\n    section: 2.5 mm2\n    cores: 3\n    rating: 16 A\n  lead-iec"), StringComparison.Ordinal),
        "hall: {things: [{name: Lamp, item: lamp, place: SL}]}\npower: {services: {A: {place: US 5 m}}, distributions: {PD1: {item: distro-none, place: USC, fed-by: service A}}}\n");

    // Twelve banks of 15 A, four on each leg; of the feeder of 25 m not two turns are left over.
    private static Plan Harmonic(double percent) => Plan(
        "shop-legs",
        "venue.yaml",
        stock => stock.Replace("third-harmonic: 70 %", string.Create(CultureInfo.InvariantCulture, $"third-harmonic: {percent:0.######} %"), StringComparison.Ordinal),
        $"hall: {{things: [{string.Join(", ", Enumerable.Range(1, 12).Select(number => $"{{name: Bank {number}, item: bank, place: SL}}"))}]}}\npower: {{services: {{A: {{place: US 19 m}}}}, distributions: {{PD1: {{item: box-three, place: US 2 m, fed-by: service A}}}}}}\n");

    private static Plan Plan(string shop, string venue, Func<string, string> change, string gig)
    {
        var folder = Path.Combine(RuleCase.Folder, shop);
        var stock = File.ReadAllText(Path.Combine(folder, "stock.yaml"));
        var door = MemoryDoor.Of(
            ("gig.yaml", $"gig: More of it\nday: Sat 12 Sep 2026\nstock: stock.yaml\nvenue: {venue}\nstage: {{size: 6 x 4 m, height: 0 m above floor}}\n{gig}"),
            ("stock.yaml", change(stock)),
            (venue, File.ReadAllText(Path.Combine(folder, venue))));
        var read = BriefReader.Read(door, "gig.yaml");
        Assert.True(read.Brief is not null, string.Join('\n', read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        return Planner.Plan(read.Brief);
    }
}

using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>
/// What plugs into what. Lighting control is sent from holes (ANSI E1.11, 7.1, from memory), microphone lines from pins (IEC 61938, from
/// memory); mains comes out of holes (IEC 60309 and all others: an open end must not be live).
/// </summary>
public sealed class LeadChainsTests
{
    [Theory]
    [InlineData("xlr-3 male", 1, "xlr-3", 1)]
    [InlineData("12 x xlr-3 female", 12, "xlr-3", 2)]
    [InlineData("locking mains 20 A female", 1, "locking mains 20 A", 2)]
    [InlineData("four-pole locking loudspeaker", 1, "four-pole locking loudspeaker", 0)]
    [InlineData("2 x jack 6.35 mm male", 2, "jack 6.35 mm", 1)]
    [InlineData("", 1, "", 0)]
    [InlineData("male", 1, "", 1)]
    public void An_end_is_read(string text, int count, string family, int sex) =>
        Assert.Equal(new LeadPlug(count, family, (LeadPlugSex)sex), LeadPlug.Read(text));

    [Fact]
    public void A_lead_is_joined_to_its_like_and_the_longer_one_lies_nearer_the_source() =>
        Assert.Equal(["mic-10", "mic-5", "mic-10 + mic-10", "mic-10 + mic-5", "mic-5 + mic-5"], Chains("mic-line", "xlr-3", "xlr-3", 2, CableGigs.Mic(5), CableGigs.Mic(10)));

    [Fact]
    public void Mains_is_turned_into_another_connector_wherever_that_is_possible() =>
        Assert.Equal(
            ["locking-5", "locking-5 + link-2", "mains-10 + locking-5"],
            Chains("mains", "16 A blue", "locking mains 20 A", 2, CableGigs.Mains(10), CableGigs.ToLocking(5), CableGigs.LinkLead(2)));

    [Fact]
    public void Mains_never_runs_backwards() =>
        Assert.Empty(Chains("mains", "locking mains 20 A", "16 A blue", 4, CableGigs.Mains(10), CableGigs.ToLocking(5), CableGigs.LinkLead(2)));

    [Fact]
    public void Leads_with_like_ends_cannot_be_joined()
    {
        Assert.Equal(["net-10", "net-50"], Chains("network", "rj45", "rj45", 4, Net(10), Net(50)));
        Assert.Equal(["speaker-10"], Chains("speaker", "four-pole", "four-pole", 4, CableGigs.Lead("speaker-10", "speaker", "four-pole", "four-pole", 10)));
        var coupler = CableGigs.Lead("net-coupler", "network", "rj45 female", "rj45 female", 0);
        Assert.Contains("net-50 + net-coupler + net-10", Chains("network", "rj45", "rj45", 3, Net(10), Net(50), coupler));
    }

    [Fact]
    public void The_adapter_that_suits_a_fixture_of_three_pins_is_the_one_with_pins_of_five_and_holes_of_three()
    {
        var fiveToThree = CableGigs.Lead("adapter-5-3", "lighting-control", "xlr-5 male", "xlr-3 female", 0.2);
        var threeToFive = CableGigs.Lead("adapter-3-5", "lighting-control", "xlr-3 male", "xlr-5 female", 0.2);
        var lead = CableGigs.Lead("control-5", "lighting-control", "xlr-5 male", "xlr-5 female", 5);
        Assert.Equal(["control-5 + adapter-5-3"], Chains("lighting-control", "xlr-5", "xlr-3", 2, lead, fiveToThree, threeToFive).Where(chain => chain.Contains("control", StringComparison.Ordinal)));
        Assert.Equal(["adapter-3-5 + control-5"], Chains("lighting-control", "xlr-3", "xlr-5", 2, lead, fiveToThree, threeToFive).Where(chain => chain.Contains("control", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_multi_needs_its_tail_and_many_connectors_are_not_one()
    {
        var tail = CableGigs.Lead("tail", "mic-line", "12 x xlr-3 male", "multipin 12 female", 2);
        var multi = CableGigs.Lead("multi-15", "mic-line", "multipin 12 male", "multipin 12 female", 15);
        Assert.Equal(["tail", "multi-15 + tail"], Chains("mic-line", "multipin 12", "12 x xlr-3", 2, tail, multi, CableGigs.Mic(5)));
        Assert.Empty(Chains("mic-line", "multipin 12", "xlr-3", 4, tail, multi));
    }

    [Fact]
    public void A_socket_whose_own_half_is_written_takes_the_other_one() =>
        Assert.Equal(["mic-5"], Chains("mic-line", "xlr-3 male", "xlr-3 female", 1, CableGigs.Mic(5)));

    [Fact]
    public void Of_chains_that_reach_only_those_are_tried_of_which_no_lead_can_be_left_out()
    {
        var chains = Find("mic-line", "xlr-3", "xlr-3", CableGigs.Mic(5), CableGigs.Mic(10));
        Assert.Equal(["mic-10", "mic-5 + mic-5"], chains.Reaching(7_000).Select(chain => chain.Text));
        Assert.Equal(["mic-10 + mic-5", "mic-10 + mic-10", "mic-5 + mic-5 + mic-5"], chains.Reaching(15_000).Select(chain => chain.Text));
        Assert.Empty(chains.Reaching(40_001));
        Assert.Equal(40_000, chains.Longest);
    }

    [Fact]
    public void A_lead_of_unknown_length_is_not_picked()
    {
        var open = CableGigs.Mic(10) with { Cable = CableGigs.Mic(10).Cable! with { Length = Given.Unknown<UnitsNet.Length>(Gigs.Here, new("length", Gigs.Here)) } };
        Assert.Empty(Chains("mic-line", "xlr-3", "xlr-3", 1, open));
    }

    private static Kind Net(double metres) => CableGigs.Lead($"net-{metres}", "network", "rj45 male", "rj45 male", metres);

    private static LeadChains Find(string carries, string from, string to, params Kind[] kinds) => LeadChains.Find(
        LeadKind.Of(new Stock(kinds.ToDictionary(kind => kind.Id, StringComparer.Ordinal)), carries), carries, LeadPlug.Read(from), LeadPlug.Read(to));

    private static IEnumerable<string> Chains(string carries, string from, string to, int most, params Kind[] kinds)
    {
        var chains = Find(carries, from, to, kinds);
        return chains.All.Where(chain => chain.Leads.Count <= most)
            .OrderBy(chain => chain.Joins).ThenBy(chain => chain.Text, StringComparer.Ordinal).Select(chain => chain.Text);
    }
}

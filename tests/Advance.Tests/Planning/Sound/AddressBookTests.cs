using Advance.Domain.Facts;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class AddressBookTests
{
    [Fact]
    public void The_sample_numbers_its_desk_and_its_stage_box_in_their_ranges() => Assert.Equal(
        ["FOH 192.168.10.11", "SB1 192.168.10.31"],
        Planner.Plan(SoundGigs.Sample).Drive.Units.Where(unit => unit.HasPort).Select(unit => $"{unit.Name} {unit.Network}"));

    [Fact]
    public void Units_of_another_kind_move_nobody()
    {
        var few = Units("consoles: {FOH: {item: desk}}\n  processors: {DRIVE: {item: processor}}");
        var many = Units("consoles: {FOH: {item: desk}, MON: {item: desk}}\n  stage-boxes: {SB1: {item: stage-box}, SB2: {item: stage-box}}\n  processors: {DRIVE: {item: processor}}");
        Assert.All(few, unit => Assert.Contains(unit, many));
    }

    [Fact]
    public void Once_issued_no_unit_moves_whatever_is_added_or_taken_away()
    {
        var names = Gen.Int[0, 5].Array[1, 6].Select(letters => (IReadOnlyList<string>)[.. letters.Distinct().Order().Select(letter => $"{(char)('A' + letter)}")]);
        Gen.Select(names, names, names).Sample(
            (before, after, boxes) =>
            {
                var issued = Planner.Plan(Gig(before, boxes));
                var next = Planner.Plan(Gig(after, before), issued.Chosen);
                var kept = issued.Drive.Units.Where(unit => next.Drive.Units.Any(other => other.Address == unit.Address)).ToList();
                Assert.All(kept, unit => Assert.Equal(unit.Network, next.Drive.Units.Single(other => other.Address == unit.Address).Network));
                Assert.Equal(next.Drive.Units.Count, next.Drive.Units.Select(unit => unit.Network).Distinct().Count());
            },
            iter: 60);
    }

    [Fact]
    public void What_is_written_is_obeyed_and_who_had_it_moves()
    {
        var issued = Planner.Plan(SoundGigs.Brief("sound:\n  consoles: {FOH: {item: desk}}"));
        var brief = SoundGigs.Brief("sound:\n  consoles: {FOH: {item: desk}, MON: {item: desk, network-address: 192.168.10.11}}");
        var units = Planner.Plan(brief, issued.Chosen).Drive.Units;
        Assert.Equal("192.168.10.11", units.Single(unit => unit.Name == "MON").Network.ToString());
        Assert.NotEqual("192.168.10.11", units.Single(unit => unit.Name == "FOH").Network.ToString());
    }

    [Fact]
    public void Another_subnet_gives_everybody_another_address()
    {
        var issued = Planner.Plan(SoundGigs.Brief("sound:\n  consoles: {FOH: {item: desk}}"));
        var next = Planner.Plan(SoundGigs.Brief("network: {subnet: 10.20.0.0/24}\nsound:\n  consoles: {FOH: {item: desk}}"), issued.Chosen);
        Assert.Equal("10.20.0.11", Assert.Single(next.Drive.Units).Network.ToString());
    }

    [Fact]
    public void While_the_network_is_open_there_is_no_address_and_the_question_is_carried_along()
    {
        var unit = Assert.Single(Planner.Plan(SoundGigs.Brief("network: {subnet: TBC venue by 4 Sep}\nsound:\n  consoles: {FOH: {item: desk}}")).Drive.Units);
        Assert.Null(unit.Network);
        Assert.Equal("venue", Assert.Single(unit.RestsOn).Who);
    }

    /// <summary>Against .NET's own <c>System.Net.IPNetwork</c> and <c>IPAddress</c>.</summary>
    [Fact]
    public void A_subnet_holds_what_it_should() => Gen.Select(Gen.UInt, Gen.Int[8, 30], Gen.UInt).Sample((within, bits, other) =>
    {
        var subnet = new Subnet(new NetworkAddress(within), bits);
        var theirs = System.Net.IPNetwork.Parse(subnet.ToString());
        var address = new NetworkAddress(other % 3 == 0 ? subnet.First.Number + (other % (uint)(subnet.Count + 2)) : other);
        var isEnd = address == subnet.First || address.Number == subnet.First.Number + (uint)subnet.Count + 1;
        Assert.Equal(theirs.Contains(System.Net.IPAddress.Parse(address.ToString())) && !isEnd, subnet.Holds(address));
        Assert.Equal(address, NetworkAddress.Read(address.ToString()));
        Assert.Equal(theirs.BaseAddress.ToString(), subnet.First.ToString());
    });

    [Theory]
    [InlineData("10.0.0")]
    [InlineData("10.0.0.256")]
    [InlineData("10.0.0.01")]
    [InlineData("10.0.0.1.1")]
    [InlineData("10.0.0.x")]
    [InlineData("")]
    public void What_is_no_address_is_none(string text) => Assert.Null(NetworkAddress.Read(text));

    private static IReadOnlyList<string> Units(string sound) =>
        [.. Planner.Plan(SoundGigs.Brief($"sound:\n  {sound}")).Drive.Units.Select(unit => $"{unit.Name} {unit.Network}")];

    private static Advance.Domain.Brief Gig(IReadOnlyList<string> desks, IReadOnlyList<string> boxes) => SoundGigs.Brief(
        $"sound:\n  consoles: {{{string.Join(", ", desks.Select(name => $"desk {name}: {{item: desk}}"))}}}\n  stage-boxes: {{{string.Join(", ", boxes.Select(name => $"box {name}: {{item: stage-box}}"))}}}");
}

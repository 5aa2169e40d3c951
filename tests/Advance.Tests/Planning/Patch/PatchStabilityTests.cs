using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>A small change to a gig changes little of its patch.</summary>
public sealed class PatchStabilityTests
{
    private const int Ports = 16;

    private static readonly Gen<int[]> Channels = Gen.Int[1, Ports].Array[1, 10].Select(channels => channels.Distinct().ToArray());

    [Fact]
    public void One_more_line_on_a_free_port_of_its_own_number_moves_none_without_an_earlier_issue() =>
        Gen.Select(Channels, Channels, Gen.Int[1, Ports]).Sample((first, second, channel) =>
        {
            var before = Planner.Plan(Two(first, second));
            var after = Planner.Plan(Two([.. first.Append(channel).Distinct()], second));
            Assert.Equal(PortsOf(before), PortsOf(after).Where(port => before.Patch.Lines.Any(line => port.StartsWith($"{line.Address} ", StringComparison.Ordinal))));
        });

    [Fact]
    public void Moving_a_microphone_on_one_box_changes_no_port() => Gen.Select(Channels, Gen.Double[-4, 4], Gen.Double[0, 5]).Sample((channels, x, y) =>
    {
        var gig = Boxed(Gigs.Act("Band", [.. channels.Select(channel => Line(channel, 0, 2))]));
        var moved = Boxed(Gigs.Act("Band", [.. channels.Select((channel, index) => index == 0 ? Line(channel, x, y) : Line(channel, 0, 2))]));
        Assert.Equal(PortsOf(Planner.Plan(gig)), PortsOf(Planner.Plan(moved)));
    });

    [Fact]
    public void Moving_a_microphone_from_one_box_to_the_other_moves_no_port_once_it_was_issued()
    {
        // Channels beyond the ports are patched where the lead is shortest, so that a first plan follows the place.
        var (right, left) = (Sided(Line(41, -3, 1)), Sided(Line(41, 3, 1)));
        var issued = Planner.Plan(right);
        Assert.Equal("SB1", issued.Patch.Lines[0].Port!.Device);
        Assert.Equal("SB2", Planner.Plan(left).Patch.Lines[0].Port!.Device);
        Assert.Equal(PortsOf(issued), PortsOf(Planner.Plan(left, issued.Chosen)));
    }

    [Fact]
    public void One_more_wedge_moves_no_other() => Gen.Select(Gen.Int[1, 8].Array[1, 5].Select(mixes => mixes.Distinct().ToArray()), Gen.Int[1, 8], Gen.Bool).Sample((mixes, more, isIssued) =>
    {
        var before = Planner.Plan(Mixed(mixes));
        var after = Planner.Plan(Mixed([.. mixes.Append(more).Distinct()]), isIssued ? before.Chosen : null);
        var ports = after.Patch.Returns.ToDictionary(mix => mix.Address, mix => mix.Port);
        Assert.All(before.Patch.Returns, mix => Assert.Equal(mix.Port, ports[mix.Address]));
    });

    private static IEnumerable<string> PortsOf(Plan plan) => plan.Patch.Lines.Select(line => $"{line.Address} {line.Port}");

    private static Brief Two(int[] first, int[] second) =>
        Boxed(Gigs.Act("First", [.. first.Select(channel => Gigs.Line(channel))]), Gigs.Act("Second", [.. second.Select(channel => Gigs.Line(channel))]));

    private static Brief Boxed(params Act[] acts) => Gigs.Brief(Gigs.Gig(acts).WithBox("box"), Gigs.Box("box", Ports));

    private static Brief Sided(InputRow row)
    {
        var gig = Gigs.Gig(Gigs.Act("Band", row)).WithBox("box").WithBox("box");
        var boxes = gig.Sound.StageBoxes;
        return Gigs.Brief(gig with { Sound = gig.Sound with { StageBoxes = [boxes[0] with { Place = At(-4, 1) }, boxes[1] with { Place = At(4, 1) }] } }, Gigs.Box("box", Ports));
    }

    private static Brief Mixed(int[] mixes)
    {
        var rows = mixes.Select(mix => new MixRow(new NumberRange(mix, mix), $"Player {mix}", null, null, null, null, "", Gigs.Here)).ToList();
        var box = Gigs.Box("box", 1) with { Ports = [new(PortKind.Output, 8, "mic-line", "xlr-3", "", Gigs.Here)] };
        return Gigs.Brief(Gigs.Gig(Gigs.Act("Band") with { Mixes = rows }).WithBox("box"), box);
    }

    private static InputRow Line(int channel, double x, double y) => Gigs.Line(channel) with { Place = At(x, y) };

    private static Given<Place> At(double x, double y) => Given.Of<Place>(new Place.AtPoint(Length.FromMeters(x), Length.FromMeters(y), null), Gigs.Here);
}

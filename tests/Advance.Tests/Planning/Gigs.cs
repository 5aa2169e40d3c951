using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;

namespace Advance.Tests.Planning;

/// <summary>Small gigs made in code, where a test is about planning alone.</summary>
internal static class Gigs
{
    public static readonly Mark Here = new("gig.yaml", 1, 1);

    public static Brief Brief(Gig gig, params Kind[] kinds) =>
        new(gig, Venue.Unknown, Company.Default, new Stock(kinds.ToDictionary(kind => kind.Id, StringComparer.Ordinal)));

    public static Gig Gig(params Act[] acts) => new()
    {
        Title = "A gig",
        At = Here,
        Days = [new Day("show", Given.Of(new WrittenDate(null, 12, 9, 2026), Here), DayKind.Show)],
        Acts = acts,
    };

    public static Gig WithBox(this Gig gig, string item) => gig with
    {
        Sound = gig.Sound with { StageBoxes = [.. gig.Sound.StageBoxes, new Device($"SB{gig.Sound.StageBoxes.Count + 1}", Given.Of(item, Here), null, null, null, null, Here)] },
    };

    public static Act Act(string name, params InputRow[] inputs) => new(name, Given.Of(1, Here), [], [], [], inputs, [], Here);

    public static InputRow Line(int channel, string? device = null, string stand = "", PortRange? port = null, Owner? from = null) => new(
        new NumberRange(channel, channel),
        $"Line {channel}",
        device is null ? null : Given.Of(new CountedItem(1, device), Here),
        stand,
        null,
        from is null ? null : Given.Of(from, Here),
        port is null ? null : Given.Of(port, Here),
        "",
        Here);

    public static Kind Box(string id, int inputs) => Kind(id, 1) with
    {
        Role = Role.StageBox,
        Ports = [new PortRow(PortKind.Input, inputs, "mic-line", "xlr-3", "", Here)],
    };

    public static Kind Kind(string id, int owned) =>
        new() { Id = id, Name = id, At = Here, Department = "sound", Owned = Given.Of(owned, Here) };
}

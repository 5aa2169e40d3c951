using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning;

/// <summary>Small sound systems as they are written, on the stock of the rule cases; and the sample gig.</summary>
internal static class SoundGigs
{
    /// <summary>A desk, a stage box and a processor, and no loudspeaker yet.</summary>
    public const string Chain = """
          consoles: {FOH: {item: desk, place: DS 10 m}}
          stage-boxes: {SB1: {item: stage-box, place: SR 3 m US 3 m, to: FOH}}
          processors:
            DRIVE: {item: processor, place: SR 3 m US 3 m, fed-by: SB1 out 7-8}
        """;

    private static readonly Lazy<Brief> Read = new(() => BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!);

    public static Brief Sample => Read.Value;

    /// <summary>The plan of a gig with these stacks.</summary>
    public static Plan Plan(string stacks, string chain = Chain, string more = "", Choices? earlier = null) =>
        Planner.Plan(Brief($"sound:\n{chain}\n  stacks:\n{stacks}\n{more}"), earlier);

    /// <summary>A gig of that text.</summary>
    /// <param name="text">Without title, day and stock.</param>
    /// <param name="shop">What to change in the stock; null for nothing.</param>
    public static Brief Brief(string text, Func<string, string>? shop = null)
    {
        var stock = File.ReadAllText(Path.Combine(RuleCase.Folder, "shop-sound", "shop.yaml"));
        stock = shop is null ? stock : shop(stock);
        var read = BriefReader.Read(MemoryDoor.Of(("gig.yaml", $"gig: A gig\nday: Sat 12 Sep 2026\nstock: shop.yaml\n{text}"), ("shop.yaml", stock)), "gig.yaml");
        Assert.Empty(read.Findings.Select(finding => $"{finding.At} {finding.Says}"));
        return read.Brief!;
    }

    /// <summary>A stack on both sides, in front of the deck.</summary>
    public static string Both(string boxes, string more = "") => $"""
            Main:
              sides: SR SL
              place: 4.6 m off centre DS 0.4 m
              from-floor-up: [{boxes}]
              fed-by: DRIVE out 1-2
              {more}
        """;

    public static IReadOnlyList<string> Rules(Plan plan, string family) =>
        [.. plan.Findings.Where(finding => finding.Rule.StartsWith(family, StringComparison.Ordinal)).Select(finding => finding.Rule).Distinct()];
}

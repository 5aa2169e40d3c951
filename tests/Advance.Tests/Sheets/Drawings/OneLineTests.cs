using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets.Drawings;

namespace Advance.Tests.Sheets.Drawings;

public sealed class OneLineTests
{
    private const double PaperAcross = 268;

    private static readonly Plan Sample = Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!);

    [Fact]
    public void Its_parts_have_all_ends_once()
    {
        var trees = new OneLineTree(Sample).All();
        var ends = trees.SelectMany(Ends).ToList();
        var parts = Enumerable.Range(0, (ends.Count / 5) + 1).SelectMany(part => OneLineTree.Part(trees, part * 5, 5).SelectMany(Ends));
        Assert.Equal(ends, parts);
    }

    /// <summary>Twelve boxes linked one behind the other, each with loads: far wider than any paper.</summary>
    [Fact]
    public void What_is_wider_than_the_paper_is_drawn_apart_and_loses_no_load()
    {
        var tree = Linked(12);
        Assert.True(OneLineDrawing.WidthOf([tree]) > 2 * PaperAcross);
        var parts = OneLineParts.Narrow(tree, OneLineRoom.Small.Wide).ToList();
        Assert.All(parts, part => Assert.InRange(OneLineDrawing.WidthOf([part]), 0, PaperAcross));
        Assert.Equal(Loads(tree), parts.SelectMany(Loads));
        Assert.All(parts.Skip(1), part => Assert.EndsWith(" link", part.Lines[0], StringComparison.Ordinal));
    }

    private static OneLineNode Linked(int count)
    {
        OneLineNode? next = null;
        for (var box = count; box > 0; box--)
        {
            var link = next is null ? [] : new[] { Outlet($"PD{box} link", next) };
            next = new OneLineNode($"PD{box}", [$"PD{box}", "63 A red", "in use 20 A"], [$"PD{box}-feed", "10 m · 16 mm²"], OneLineLook.Distribution, [.. Enumerable.Range(1, 3).Select(number => Outlet($"PD{box} outlet {number}", Load($"load {box}-{number}"))), .. link]);
        }

        return new OneLineNode("A", ["service A"], [], OneLineLook.Service, [next!]);
    }

    private static OneLineNode Outlet(string name, OneLineNode end) => new(name, ["1", "C16 30 mA"], [], OneLineLook.Device, [end]) { Name = name };

    private static OneLineNode Load(string name) => new(name, [name, "1 A of 16 A"], [$"{name} lead", "10 m · 2.5 mm²"], OneLineLook.Load, []);

    private static IEnumerable<string> Ends(OneLineNode node) => node.Children.Count == 0 ? [node.Id] : node.Children.SelectMany(Ends);

    private static IEnumerable<string> Loads(OneLineNode node) => node.Looks == OneLineLook.Load ? [node.Id] : node.Children.SelectMany(Loads);
}

using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets.Drawings;

namespace Advance.Tests.Sheets.Drawings;

public sealed class OneLineTests
{
    private static readonly Plan Sample = Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!);

    [Fact]
    public void Its_parts_have_all_ends_once()
    {
        var trees = new OneLineTree(Sample).All();
        var ends = trees.SelectMany(Ends).ToList();
        var parts = Enumerable.Range(0, (ends.Count / 5) + 1).SelectMany(part => OneLineTree.Part(trees, part * 5, 5).SelectMany(Ends));
        Assert.Equal(ends, parts);
    }

    private static IEnumerable<string> Ends(OneLineNode node) => node.Children.Count == 0 ? [node.Id] : node.Children.SelectMany(Ends);
}

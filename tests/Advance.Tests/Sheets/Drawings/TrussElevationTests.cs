using Advance.Sheets.Drawings;

namespace Advance.Tests.Sheets.Drawings;

public sealed class TrussElevationTests
{
    [Theory]
    [InlineData("Front", 3 + 3 + 3)]
    [InlineData("Back", 2 + 3 + 1)]
    public void No_label_stands_on_another_and_picks_points_and_loads_are_named(string name, int labels)
    {
        var truss = HungShow.Plan.Rigging.Trusses.Single(truss => truss.Name == name);
        var scene = TrussElevationDrawing.Draw(HungShow.Plan, truss)!;
        Assert.Equal(labels, HungShow.LabelsOf(scene).Count);
        var words = HungShow.WordsOf(scene).ToList();
        Assert.All(truss.Picks, pick => Assert.Contains(pick.Name, words));
        Assert.All(truss.Loads.Skip(1), load => Assert.Contains(load.What, words));
    }
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Planning;
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

    /// <summary>Two kinds of fixtures among each other, and a single heavy thing among them: three arrows of three lengths, three labels.</summary>
    [Fact]
    public void Runs_of_fixtures_among_each_other_have_one_label_and_one_length_of_arrow_each()
    {
        var truss = HungShow.Plan.Rigging.Trusses[0];
        CarriedLoad At(string what, double weight, double along) => new(what, new(UnitsNet.Mass.FromKilograms(weight), Doubts.None, Reason.Derived.It), Known.Weighed, along, null, 0);
        var runs = LoadRuns.Of(truss with
        {
            Loads = [truss.Loads[0], At("Spot 1", 30, 1), At("Wash 1", 10, 1.2), At("Spot 2", 30, 2), At("Wash 2", 10, 2.2), At("mirror", 80, 2.5), At("Spot 3", 30, 3), At("Wash 3", 10, 3.2)],
        });
        Assert.Equal(["Spot 1–3", "Wash 1–3", "mirror"], runs.Select(run => run.Places.Count > 1 ? LoadRuns.NameOf(run) : run.Places[0][0].What));
        Assert.Equal([0, 1, 2], runs.Select(run => run.Tier));
    }
}

using Advance.Paper;
using Advance.Paper.Layout;
using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Tests.Paper.Pictures.Placing;

/// <summary>The figures under a bar can be told apart, however narrow the picture.</summary>
public sealed class ScaleBarTests
{
    [Theory]
    [InlineData(25)]
    [InlineData(75)]
    [InlineData(100)]
    [InlineData(125)]
    [InlineData(250)]
    public void No_figure_stands_on_another(int ratio)
    {
        var faults = new Faults();
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        var composer = new Composer(shaper, TypeScale.For(TypeClass.Desk), new Targets([], faults));
        foreach (var unit in new[] { BarUnit.Metres, BarUnit.Feet })
        {
            foreach (var wide in new[] { 90_000, 120_000, 300_000 })
            {
                var marks = new List<Mark>();
                ScaleBar.Draw(ratio, unit, "at A4", composer, 0, wide, marks);
                var runs = marks.OfType<RunMark>().ToList();
                var figures = runs.Where(run => run.Baseline == runs[0].Baseline).OrderBy(run => run.X).ToList();
                Assert.InRange(figures.Count, 2, 3);
                Assert.All(figures.Zip(figures.Skip(1)), next => Assert.True(next.First.X + next.First.Width < next.Second.X, $"1 : {ratio}, {unit}, {wide}"));
            }
        }
    }
}

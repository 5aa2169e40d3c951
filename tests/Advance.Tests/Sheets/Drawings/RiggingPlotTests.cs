using Advance.Paper.Pictures;
using Advance.Sheets.Drawings;

namespace Advance.Tests.Sheets.Drawings;

public sealed class RiggingPlotTests
{
    private static readonly Scene Plot = RiggingPlotDrawing.Draw(HungShow.Plan)!;

    [Fact]
    public void No_label_stands_on_another() => Assert.Equal(2 + 6 + 1, HungShow.LabelsOf(Plot).Count);

    [Fact]
    public void Every_pick_and_every_point_is_named()
    {
        var words = string.Join(' ', HungShow.WordsOf(Plot));
        Assert.All(HungShow.Plan.Rigging.Trusses.SelectMany(truss => truss.Picks), pick => Assert.Contains(pick.Name, words, StringComparison.Ordinal));
        Assert.All(HungShow.Plan.Rigging.Points, point => Assert.Contains(point.Point.Name, words, StringComparison.Ordinal));
    }

    /// <summary>P4 and P5 lie 1 m to either side of the pick, so both legs end over it, at stage left 2.25 m, upstage 4.5 m.</summary>
    [Fact]
    public void Legs_of_a_bridle_meet_over_its_pick()
    {
        var legs = Plot.Layers.Single(layer => layer.Name == "bridles").Shapes.Cast<Line>().ToList();
        Assert.Equal(2, legs.Count);
        Assert.All(legs, leg => Assert.Equal((2250, -4500), (leg.To.X, leg.To.Y), new Near()));
    }

    /// <summary>The second stage stands 20 m to stage left and 3 m upstage of the first, the third nobody knows where.</summary>
    [Fact]
    public void All_stages_are_drawn_where_they_stand()
    {
        var plan = HungShow.PlanOf(HungShow.Gig.Replace("stage: {size: 10 x 6 m, height: 0.8 m above floor}", """
            stages:
              Large: {size: 10 x 6 m, height: 0.8 m above floor, downstage-edge: SL 2 m US 5 m of hall door}
              Small: {size: 4 x 3 m, height: 0.4 m above floor, downstage-edge: SL 22 m US 8 m of hall door}
              Attic: {size: 2 x 2 m, height: 0.4 m above floor}
            """, StringComparison.Ordinal));
        var decks = RiggingPlotDrawing.Draw(plan)!.Layers.Where(layer => layer.Name == "deck").SelectMany(layer => layer.Shapes.Cast<Rectangle>()).ToList();
        Assert.Equal([(0, -3000), (20_000, -4500)], decks.Select(deck => (deck.Middle.X, deck.Middle.Y)), new Near());
        Assert.Equal(["stage Attic"], RiggingPlotDrawing.NotDrawn(plan));
    }

    private sealed class Near : IEqualityComparer<(double X, double Y)>
    {
        public bool Equals((double X, double Y) x, (double X, double Y) y) => Math.Abs(x.X - y.X) < 1e-6 && Math.Abs(x.Y - y.Y) < 1e-6;

        public int GetHashCode((double X, double Y) obj) => 0;
    }
}

using Advance.Paper.Layout;
using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Planning;
using Advance.Sheets;
using Advance.Sheets.Drawings;

namespace Advance.Golden;

/// <summary>What makes a picture of what hangs or stands a bad one, whatever is on it.</summary>
public sealed class RiggingPictureTests
{
    // In 0.1 mm: nobody follows a longer line over a drawing.
    private const int LongestLeader = 350;

    public static TheoryData<string> Gigs => Samples.Gigs;

    [Theory]
    [MemberData(nameof(Gigs))]
    public void In_the_pictures_of_trusses_every_label_stands_for_itself_over_the_floor_and_near_what_it_names(string gig)
    {
        var bad = Pictures(gig).Where(one => one.Scene.Layers.Any(layer => layer.Name == "forces")).SelectMany(one => one.Set.Labels
            .Where(label => label.Number > 0 || IsFar(label) || label.Box.Bottom > one.Set.Frame.Tenths(PlotScale.At(0, 0)).Y)
            .Select(label => $"{one.Set.Title}: {label.Label.Lines[0].Text}"));
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void On_the_rigging_plot_every_label_stands_for_itself_and_no_leader_crosses_what_hangs(string gig)
    {
        var bad = Pictures(gig).Where(one => one.Scene.Layers.Any(layer => layer.Name == "trusses") && one.Scene.Layers.SelectMany(layer => layer.Shapes).OfType<Symbol>().Any(symbol => symbol.Label?.Lines.Count > 1))
            .SelectMany(one => one.Set.Labels.Where(label => label.Number > 0 || Hung(one).Any(thing => thing.Id != label.Id && Crosses(label, thing.Box))).Select(label => label.Label.Lines[0].Text));
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_hang_is_dashed_on_the_plot_of_the_stage_or_told_to_be_further_out(string gig)
    {
        var plan = Samples.Plan(gig);
        Assert.All(plan.Stage.Stages, stage =>
        {
            var scene = StagePlotDrawing.Draw(plan, stage, act: null);
            var hung = scene.Layers.Single(layer => layer.Name == "hangs").Shapes.Cast<Symbol>().ToList();
            Assert.All(hung, symbol => Assert.All(symbol.Shapes, shape => Assert.Equal(Dash.Dashed, shape.Pen.Dash)));
            Assert.All(hung, symbol => Assert.Contains("hangs", symbol.Label!.Lines[1].Text, StringComparison.Ordinal));
            Assert.Equal(
                plan.Rigging.Hangs.Where(hang => hang.Stack.Spot is not null).Select(hang => hang.Address.Text).Order(StringComparer.Ordinal),
                hung.Select(symbol => symbol.Id).Concat(StagePlotDrawing.FurtherOut(plan, stage, act: null).Where(thing => thing.Look == Look.Hang).Select(thing => thing.Address.Text)).Order(StringComparer.Ordinal));
        });
    }

    private static bool IsFar(PlacedLabel label) => label.Leader is { } leader && leader.LengthSquared > (long)LongestLeader * LongestLeader;

    // Another thing than that which the named one hangs on.
    private static bool Crosses(PlacedLabel label, Box thing) =>
        label.Leader is { } leader && leader.Meets(thing) && !thing.Holds(new Box(leader.X2, leader.Y2, leader.X2, leader.Y2));

    private static IEnumerable<(string Id, Box Box)> Hung((Scene Scene, SetPicture Set) one) =>
        from layer in one.Scene.Layers
        where layer.Name is "trusses" or "hangs"
        from symbol in layer.Shapes.Cast<Symbol>()
        let outline = (Rectangle)symbol.Shapes[0]
        let corner = one.Set.Frame.Tenths(outline.Middle.Plus(-outline.Width / 2, -outline.Height / 2))
        let opposite = one.Set.Frame.Tenths(outline.Middle.Plus(outline.Width / 2, outline.Height / 2))
        select (symbol.Id, new Box(corner.X, corner.Y, opposite.X, opposite.Y).Grown(5));

    private static List<(Scene Scene, SetPicture Set)> Pictures(string gig)
    {
        var faults = new Paper.Faults();
        var composed = Sheets.Composer.Compose(Samples.Plan(gig), PackageRequest.Everything, CompanyFolder.None);
        var laid = DocumentLayout.LayOut(composed.Document, FaceSet.Of([], faults), new Paper.Wording(), faults);
        return [.. laid.Pictures.Select(one => (one.Key, one.Value))];
    }
}

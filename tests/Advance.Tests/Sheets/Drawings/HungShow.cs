using Advance.Paper;
using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using Advance.Planning;
using Advance.Tests.Planning;

namespace Advance.Tests.Sheets.Drawings;

/// <summary>A small show of two trusses, one of them on a bridle, and its drawings on A4.</summary>
internal static class HungShow
{
    // Of an A4 page across, in 1/1000 pt.
    private const int Wide = 750_000;
    private const int High = 420_000;

    /// <summary>As written.</summary>
    public const string Gig = """
        gig: Two trusses
        day: Sat 12 Sep 2026
        stock: stock.yaml
        venue: venue.yaml
        stage: {size: 10 x 6 m, height: 0.8 m above floor}
        rigging:
          trusses:
            Front:
              item: truss-3
              length: 9 m
              place: SR 0 m US 0 m
              trim: 6 m above floor
              picks: |
                along | hoist | point
                0.5 m | hoist | P1
                4.5 m | hoist | P2
                8.5 m | hoist | P3
            Back:
              item: truss-3
              length: 6 m
              place: SR 0 m US 4.5 m
              trim: 5.2 m above deck
              picks: |
                along | hoist | point | body
                0.75 m | hoist | P6 | up
                5.25 m | hoist | B1 | up
          bridles:
            B1: {points: [P4, P5], drop: 1.2 m}
          loads: |
            truss | what | weight | along | to
            Front | screen | 120 kg | 2.5 m |
            Front | second screen | 120 kg | 6 m |
            Front | black drape | 24 kg | 1 m | 8 m
            Back | banner | 12 kg | 3 m |
        """;

    private const string Stock = """
        kinds:
          truss-3:
            name: Truss 3 m
            owned: 12
            weight: 18 kg weighed
            truss: {length: 3 m, bending-stiffness: 1700 kNm2, moment: 18 kNm, shear: 11 kN}
          hoist:
            name: Hoist 500 kg
            owned: 8
            weight: 45 kg weighed
            hoist: {lifts: 500 kg, holds: 500 kg}
        """;

    private const string Venue = """
        venue: A hall
        roof-points:
          P1: {place: SR 4 m US 0 m, height: 8 m, limit: 600 kg}
          P2: {place: SR 0 m US 0 m, height: 8 m, limit: 600 kg}
          P3: {place: SL 4 m US 0 m, height: 8 m, limit: 600 kg}
          P4: {place: SL 1.25 m US 4.5 m, height: 8 m, limit: 600 kg}
          P5: {place: SL 3.25 m US 4.5 m, height: 8 m, limit: TBC venue}
          P6: {place: SR 2.25 m US 4.5 m, height: 8 m, limit: 600 kg}
        """;

    /// <summary>Worked out.</summary>
    public static Plan Plan { get; } = PlanOf(Gig);

    /// <summary>Another gig with the same stock in the same hall, worked out.</summary>
    public static Plan PlanOf(string gig) => SmallShow.Of(gig, Stock, Venue);

    /// <summary>Its labels, none of them moved to a key under the picture, checked to keep off each other.</summary>
    public static IReadOnlyList<PlacedLabel> LabelsOf(Scene scene)
    {
        var faults = new Faults();
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        var composer = new Composer(shaper, TypeScale.For(TypeClass.Desk), new Targets([], faults));
        var labels = new PictureSetter(composer, faults, "at A4", new KnownPictures()).Set(scene, Wide, High)!.Labels;
        Assert.All(labels, label => Assert.Equal(0, label.Number));
        Assert.All(labels.Index(), one => Assert.All(labels.Take(one.Index), other => Assert.False(one.Item.Box.Meets(other.Box), $"{one.Item.Id} and {other.Id}")));
        return labels;
    }

    /// <summary>All words of the labels of its symbols.</summary>
    public static IEnumerable<string> WordsOf(Scene scene) =>
        scene.Layers.SelectMany(layer => layer.Shapes).OfType<Symbol>().SelectMany(symbol => symbol.Label?.Lines ?? []).Select(line => line.Text);
}

using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>A stack to scale, seen from its front: boxes the way up that they stand, joints between them, the floor and the height.</summary>
internal static class SystemDrawing
{
    // How far the line of the floor goes beyond the boxes, in mm of the real thing.
    private const double Beyond = 120;

    /// <summary>Draws it; null where the size of a box is unknown.</summary>
    public static Scene? Draw(StackPlan stack, Speech speech)
    {
        if (Bands(stack) is not { } bands)
        {
            return null;
        }

        var half = stack.Boxes.Max(WidthMm) / 2;
        return new Scene(
            $"{stack.Name} seen from the front, {stack.Boxes.Count} boxes from the floor up",
            [
                new Layer("boxes", [.. stack.Boxes.Zip(bands).SelectMany(pair => BoxElevation.Of(pair.First, WidthMm(pair.First), pair.Second.Top, pair.Second.Bottom))]),
                new Layer("joints", [.. stack.Boxes.Zip(bands).SelectMany(pair => JointElevation.Of(pair.First, WidthMm(pair.First), pair.Second.Bottom))]),
                new Layer("floor", [.. Ground(stack, half)]),
                new Layer("dimensions", [new Dimension(new Point(half, bands[^1].Top), new Point(half, 0), speech.Say(stack.Height.Value!.Value))]),
            ]);
    }

    /// <summary>Upper and lower edge of each box from the lowest up, in mm with the foot of the stack at 0 and down as plus; null where a size is unknown.</summary>
    public static IReadOnlyList<(double Top, double Bottom)>? Bands(StackPlan stack) =>
        stack.Boxes.Count > 0 && stack.Boxes.All(box => box.Base.Value is not null && box.Height.Value is not null && WidthMm(box) > 0)
            ? [.. stack.Boxes.Select(box => (-Mm(box.Base.Value!.Value + box.Height.Value!.Value), -Mm(box.Base.Value!.Value)))]
            : null;

    private static IEnumerable<Shape> Ground(StackPlan stack, double half)
    {
        yield return new Line(new Point(-half - Beyond, 0), new Point(half + Beyond, 0)) { Pen = Pen.Heavy };
        var word = stack.On == Footing.Deck ? "deck" : "floor";
        yield return new Lettering(new Point(-half - Beyond, Beyond / 2), word, TextStyle.Quiet) { Anchor = Anchor.Left };
    }

    private static double WidthMm(StackedBox box) => box.Piece.Kind?.Size is { } given && given.Is(out var size) ? Mm(size.Width) : 0;

    private static double Mm(UnitsNet.Length length) => length.Millimeters;
}

using System.Globalization;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>One loudspeaker from the front. Two lines mark its own top, so that it is seen which way up it stands.</summary>
internal static class BoxElevation
{
    // Shares of the box, from its own top: where the two lines run, and where the cone sits.
    private const double FirstLine = 0.14;
    private const double SecondLine = 0.2;
    private const double LineInset = 0.12;
    private const double Cone = 0.62;
    private const double ConeRadius = 0.3;
    private const double SubConeRadius = 0.36;

    /// <summary>From back to front.</summary>
    /// <param name="box">The box.</param>
    /// <param name="width">In mm.</param>
    /// <param name="top">Its upper edge in mm.</param>
    /// <param name="bottom">Its lower edge in mm.</param>
    public static IEnumerable<Shape> Of(StackedBox box, double width, double top, double bottom)
    {
        yield return new Rectangle(new Point(0, (top + bottom) / 2), width, bottom - top) { Fill = Fill.White };
        if (box.IsLoudspeaker)
        {
            foreach (var shape in Front(box, width, top, bottom))
            {
                yield return shape;
            }
        }

        var number = box.Position.ToString(CultureInfo.InvariantCulture);
        yield return new Lettering(new Point(-width / 2, (top + bottom) / 2).Plus(-width * 0.1, 0), number, TextStyle.Strong) { Anchor = Anchor.Right };
    }

    private static IEnumerable<Shape> Front(StackedBox box, double width, double top, double bottom)
    {
        if (box.IsRearFacing)
        {
            yield return new Lettering(new Point(0, (top + bottom) / 2), "rear", TextStyle.Quiet);
        }
        else
        {
            var radius = Math.Min(width, bottom - top) * (box.IsSub ? SubConeRadius : ConeRadius);
            yield return new Circle(new Point(0, At(box, top, bottom, box.IsSub ? 0.56 : Cone)), radius) { Pen = Pen.Thin };
        }

        if (!box.IsSub || box.IsUpsideDown)
        {
            foreach (var share in (double[])[FirstLine, SecondLine])
            {
                var y = At(box, top, bottom, share);
                var half = width * (0.5 - LineInset);
                yield return new Line(new Point(-half, y), new Point(half, y)) { Pen = Pen.Thin };
            }
        }
    }

    private static double At(StackedBox box, double top, double bottom, double share) =>
        box.IsUpsideDown ? bottom - ((bottom - top) * share) : top + ((bottom - top) * share);
}

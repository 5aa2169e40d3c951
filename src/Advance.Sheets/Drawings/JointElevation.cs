using Advance.Paper.Pictures;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>What joins a box to the one below it, drawn over the seam.</summary>
internal static class JointElevation
{
    // For a joint whose size nobody gave, as a share of the box's width, and in mm.
    private const double UsualWidth = 0.5;
    private const double UsualHeight = 40;

    /// <summary>Its pieces side by side; nothing where there is no joint.</summary>
    /// <param name="box">The upper box.</param>
    /// <param name="width">Of that box, in mm.</param>
    /// <param name="seam">Its lower edge, in mm.</param>
    public static IEnumerable<Shape> Of(StackedBox box, double width, double seam)
    {
        if (box.Joint is not { Pieces: > 0 } joint)
        {
            yield break;
        }

        var (wide, high) = joint.Kind.Size is { } given && given.Is(out var size)
            ? (size.Width.Millimeters, size.Height?.Millimeters ?? UsualHeight)
            : (width * UsualWidth / joint.Pieces, UsualHeight);
        var room = width / joint.Pieces;
        for (var piece = 0; piece < joint.Pieces; piece++)
        {
            var x = (-width / 2) + (room * (piece + 0.5));
            yield return new Rectangle(new Point(x, seam), Math.Min(wide, room * 0.8), high) { Fill = Fill.Black };
        }
    }
}

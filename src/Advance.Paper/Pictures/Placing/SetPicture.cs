using Advance.Paper.Layout;

namespace Advance.Paper.Pictures.Placing;

/// <summary>A scene laid out for a box on the paper.</summary>
/// <param name="Width">In 1/1000 pt.</param>
/// <param name="Height">In 1/1000 pt.</param>
/// <param name="Marks">From its upper left corner.</param>
/// <param name="Title">What it shows, in words.</param>
internal sealed record SetPicture(int Width, int Height, List<Mark> Marks, string Title)
{
    /// <summary>Where the scene came to lie.</summary>
    public required Frame Frame { get; init; }

    /// <summary>How far the frame's corner was moved on the paper, in 1/1000 pt.</summary>
    public required (int X, int Y) Origin { get; init; }

    /// <summary>Labels with their boxes, in 0.1 mm from the frame's corner.</summary>
    public required IReadOnlyList<PlacedLabel> Labels { get; init; }

    /// <summary>Down from the picture's upper edge, in 1/1000 pt, for a y of the scene.</summary>
    public int Down(double y) => Frame.Mils(new Point(Frame.Left, y)).Y + Origin.Y;
}

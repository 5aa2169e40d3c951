using Advance.Paper.Pictures.Placing;

namespace Advance.Paper.Layout;

/// <summary>A picture, laid out.</summary>
/// <param name="Width">In 1/1000 pt.</param>
/// <param name="Height">In 1/1000 pt.</param>
/// <param name="Picture">What is drawn there.</param>
internal sealed record PictureMark(int Width, int Height, SetPicture Picture) : Mark
{
    public int X { get; init; }

    public int Y { get; init; }

    public override int Top => Y;

    public override int Bottom => Y + Height;

    public override Mark Moved(int x, int y) => this with { X = X + x, Y = Y + y };
}

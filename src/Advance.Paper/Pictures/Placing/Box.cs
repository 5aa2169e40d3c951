namespace Advance.Paper.Pictures.Placing;

/// <summary>A rectangle along the axes, in 0.1 mm of the paper. Boxes that only touch do not meet.</summary>
internal readonly record struct Box(int Left, int Top, int Right, int Bottom)
{
    public int Width => Right - Left;

    public int Height => Bottom - Top;

    public int MiddleX => (Left + Right) / 2;

    public int MiddleY => (Top + Bottom) / 2;

    public bool IsEmpty => Right < Left;

    public static Box Nothing { get; } = new(int.MaxValue, int.MaxValue, int.MinValue, int.MinValue);

    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Box other) => Left <= other.Left && Top <= other.Top && Right >= other.Right && Bottom >= other.Bottom;

    public Box With(int x, int y) => new(Math.Min(Left, x), Math.Min(Top, y), Math.Max(Right, x), Math.Max(Bottom, y));

    public Box With(Box other) => other.IsEmpty ? this
        : new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    public Box Grown(int by) => Grown(by, by);

    public Box Grown(int x, int y) => new(Left - x, Top - y, Right + x, Bottom + y);
}

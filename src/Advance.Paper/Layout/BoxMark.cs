using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>A rectangle, filled, outlined or hatched.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
internal sealed record BoxMark(int X, int Y, int Width, int Height) : Mark
{
    /// <summary>What it is filled with; null for nothing.</summary>
    public Shade? Fill { get; init; }

    /// <summary>Weight of its outline, which lies inside of it; 0 for none.</summary>
    public int Outline { get; init; }

    /// <summary>Radius of its corners.</summary>
    public int Radius { get; init; }

    /// <summary>True for slanting lines.</summary>
    public bool IsHatched { get; init; }

    public override int Top => Y;

    public override int Bottom => Y + Height;

    public override Mark Moved(int x, int y) => this with { X = X + x, Y = Y + y };
}

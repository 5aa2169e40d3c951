namespace Advance.Paper.Layout;

/// <summary>A place that leads somewhere when it is touched.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Target">An address, or # and an id.</param>
internal sealed record LinkMark(int X, int Y, int Width, int Height, string Target) : Mark
{
    public override int Top => Y;

    public override int Bottom => Y + Height;

    public override Mark Moved(int x, int y) => this with { X = X + x, Y = Y + y };
}

using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>A straight line.</summary>
internal sealed record StrokeMark(int X1, int Y1, int X2, int Y2, int Weight, Shade Shade) : Mark
{
    public override int Top => Math.Min(Y1, Y2);

    public override int Bottom => Math.Max(Y1, Y2);

    public override Mark Moved(int x, int y) => this with { X1 = X1 + x, X2 = X2 + x, Y1 = Y1 + y, Y2 = Y2 + y };
}

using System.Runtime.InteropServices;

namespace Advance.Paper.Layout;

/// <summary>A step of a path, in 1/1000 pt.</summary>
/// <param name="Kind">How it goes there.</param>
/// <param name="X">Where it goes.</param>
/// <param name="Y">Where it goes.</param>
/// <param name="X1">First handle of a curve.</param>
/// <param name="Y1">First handle of a curve.</param>
/// <param name="X2">Second handle of a curve.</param>
/// <param name="Y2">Second handle of a curve.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PathStep(PathStepKind Kind, int X, int Y, int X1 = 0, int Y1 = 0, int X2 = 0, int Y2 = 0)
{
    public PathStep Moved(int x, int y) => new(Kind, X + x, Y + y, X1 + x, Y1 + y, X2 + x, Y2 + y);
}

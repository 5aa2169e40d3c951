using Advance.Paper.Pictures;
using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>Lines and curves, open or closed.</summary>
/// <param name="Steps">From the first point on.</param>
internal sealed record PathMark(PathStep[] Steps) : Mark
{
    /// <summary>Weight of the line in 1/1000 pt; 0 for none.</summary>
    public int Weight { get; init; }

    public Shade Shade { get; init; }

    public Dash Dash { get; init; }

    public Fill Fill { get; init; }

    public override int Top => Steps.Min(s => s.Y);

    public override int Bottom => Steps.Max(s => s.Y);

    public override Mark Moved(int x, int y) => this with { Steps = Array.ConvertAll(Steps, s => s.Moved(x, y)) };
}

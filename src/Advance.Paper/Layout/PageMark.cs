using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>The number of the page of an id, filled in when all pages are known.</summary>
internal sealed record PageMark(int X, int Baseline, TypeStyle Style, string Target) : Mark
{
    public override int Top => Baseline - Style.Cap;

    public override int Bottom => Baseline;

    public override Mark Moved(int x, int y) => this with { X = X + x, Baseline = Baseline + y };
}

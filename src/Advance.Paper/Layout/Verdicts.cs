using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>What is drawn behind a figure that was judged.</summary>
internal static class Verdicts
{
    public static BoxMark Ground(Verdict verdict, int x, int y, int width, int height) => verdict == Verdict.CannotBeJudged
        ? new BoxMark(x, y, width, height) { IsHatched = true }
        : new BoxMark(x, y, width, height) { Outline = 1300 };
}

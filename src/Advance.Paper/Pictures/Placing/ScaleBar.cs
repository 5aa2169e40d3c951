using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>The bar under a drawing to scale: a dark and a light part, figures under it, and the ratio in words.</summary>
internal static class ScaleBar
{
    private const int Thick = 5000;
    private const double LongestHalfMm = 25;

    // Between two figures under it, in 1/1000 pt.
    private const int FigureGap = 3000;

    // Lengths of half a bar.
    private static readonly double[] Steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200];

    /// <summary>Height with its figures in 1/1000 pt.</summary>
    public static int Height(Composer composer) => Thick + TypeScale.Leading(composer.Scale.Small) + 2000;

    /// <summary>Draws the bar at the left end of a row.</summary>
    /// <param name="ratio">How many times smaller than life.</param>
    /// <param name="unit">What its figures count.</param>
    /// <param name="atPaper">What follows the ratio, as <c>at A4</c>.</param>
    /// <param name="composer">Sets its text.</param>
    /// <param name="y">Upper edge.</param>
    /// <param name="width">Room for bar and words, in 1/1000 pt.</param>
    /// <param name="marks">Taken up there.</param>
    public static void Draw(int ratio, BarUnit unit, string atPaper, Composer composer, int y, int width, List<Mark> marks)
    {
        var unitMm = unit == BarUnit.Feet ? 304.8 : 1000;
        var words = $"1 : {ratio} {atPaper}";
        var gap = composer.Scale.Body * 2;
        var room = (width - gap - composer.Compose(words, composer.Quiet).Most) / 2;
        // The longest half that is not longer than 25 mm on the paper, and leaves room for the words.
        var step = Steps[0];
        foreach (var next in Steps)
        {
            if (next * unitMm / ratio <= LongestHalfMm && Mil.FromMm(next * unitMm / ratio) <= room)
            {
                step = next;
            }
        }

        var half = Mil.FromMm(step * unitMm / ratio);
        marks.Add(new BoxMark(0, y, half, Thick) { Fill = Shade.Ink, Layer = "scale" });
        marks.Add(new BoxMark(half, y, half, Thick) { Outline = 600, Layer = "scale" });
        var name = unit == BarUnit.Feet ? "ft" : "m";
        var baseline = y + Thick + TypeScale.Baseline(composer.Scale.Small) + 1000;
        Write("0", 0, baseline);
        if (Across("0") + (Across(Figure(step)) / 2) <= half && (Across(Figure(step)) + Across(Figure(step * 2))) / 2 <= half)
        {
            Write(Figure(step), half, baseline);
        }

        Write($"{Figure(step * 2)} {name}", half * 2, baseline);
        Write(words, (half * 2) + gap, y + Thick + (composer.Quiet.Cap / 4));

        int Across(string text) => composer.Compose(text, composer.Quiet).Most + FigureGap;

        void Write(string text, int x, int at)
        {
            var set = composer.Compose(text, composer.Quiet).OnOneLine(0, out var across);
            var left = x == 0 || at < baseline ? x : Math.Max(Across("0"), x - (composer.Compose(text.Split(' ')[0], composer.Quiet).Most / 2));
            marks.Add(new RunMark(left, at, composer.Quiet, set, across) { Layer = "scale" });
        }
    }

    private static string Figure(double value) => value.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}

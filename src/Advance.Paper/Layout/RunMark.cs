using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>Words on one base line in one style.</summary>
/// <param name="X">Where the first word begins.</param>
/// <param name="Baseline">Their base line.</param>
/// <param name="Style">How they are set.</param>
/// <param name="Words">From left to right.</param>
/// <param name="Width">From the first word to the end of the last.</param>
internal sealed record RunMark(int X, int Baseline, TypeStyle Style, PlacedWord[] Words, int Width) : Mark
{
    /// <summary>Turned about the beginning of its base line, in degrees clockwise. Its edges are told as if it were not.</summary>
    public double Turn { get; init; }

    public override int Top => Baseline - Style.Cap;

    public override int Bottom => Baseline + (int)(Style.Size * BuiltIn.Descent);

    public override Mark Moved(int x, int y) => this with { X = X + x, Baseline = Baseline + y };

    /// <summary>The words with the spaces between them.</summary>
    public string Text() =>
        Words.Length == 1 ? Words[0].Word.Text : string.Concat(Words.Select(w => w.AfterSpace ? " " + w.Word.Text : w.Word.Text));
}

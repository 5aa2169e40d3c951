namespace Advance.Domain.Stocks;

/// <summary>Which chords a pick holds, as it is printed.</summary>
public static class HeldChordsWords
{
    /// <summary><c>all chords</c>, <c>the lower chords</c> or <c>the upper chords</c>.</summary>
    public static string Words(this HeldChords chords) => chords switch
    {
        HeldChords.Lower => "the lower chords",
        HeldChords.Upper => "the upper chords",
        _ => "all chords",
    };
}

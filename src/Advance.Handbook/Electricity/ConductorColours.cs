namespace Advance.Handbook;

/// <summary>
/// By which colours conductors are known. Sources: BS 7671 table 51, which is HD 308, for Europe; NEC 200.6 and 250.119 for neutral and earth in
/// the United States, where the colours of lines are common practice alone: black, red and blue at 120/208 V, black and red at 120/240 V.
/// </summary>
public static class ConductorColours
{
    private static readonly string[] EuropeanLines = ["brown", "black", "grey"];
    private static readonly string[] AmericanLines = ["black", "red", "blue"];

    /// <summary>Earth, neutral, then lines: the order in which single-pole leads are connected.</summary>
    /// <param name="lines">How many lines there are, 1 to 3.</param>
    /// <param name="isAmerican">Whether the NEC holds.</param>
    public static IReadOnlyList<(string Conductor, string Colour)> Of(int lines, bool isAmerican) =>
    [
        ("Earth", isAmerican ? "green" : "green and yellow"),
        ("Neutral", isAmerican ? "white or grey" : "blue"),
        .. (isAmerican ? AmericanLines : EuropeanLines).Take(lines).Select((colour, index) => (lines == 1 ? "Line" : FormattableString.Invariant($"L{index + 1}"), colour)),
    ];
}

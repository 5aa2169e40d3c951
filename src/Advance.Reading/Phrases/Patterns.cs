using System.Buffers;

namespace Advance.Reading.Phrases;

/// <summary>
/// Pieces of the regular expressions that the schema gives to editors. Reading never runs them. They use only what ECMA-262 and .NET
/// understand alike.
/// </summary>
internal static class Patterns
{
    public const string Spaces = @"\s*";
    public const string Gap = @"\s+";
    public const string Whole = "[0-9]{1,9}";
    public const string Number = @"(?:[0-9]{1,12}(?:\.[0-9]{1,12})?|\.[0-9]{1,12})";
    public const string Minus = "[-‐‑‒–—−]";
    public const string Times = "[x×]";
    public const string Foot = "['‘’‛′]";
    public const string Inch = "[\"“”„″]";

    /// <summary>What must not follow a unit, since it would be taken for part of it.</summary>
    public const string UnitEnd = """(?![A-Za-z%°/23²³×'‘’‛′"“”„″])""";

    /// <summary>A name: any text that starts and ends with something that can be seen.</summary>
    public const string Text = @"\S(?:[\s\S]*\S)?";

    private static readonly SearchValues<char> Syntax = SearchValues.Create(@"\^$.|?*+()[]{}/");

    /// <summary>One of several words, as they stand.</summary>
    public static string AnyOf(IEnumerable<string> words) => $"(?:{string.Join('|', words.Select(Literal))})";

    // Regex.Escape also escapes spaces and #, which ECMA-262 does not allow.
    private static string Literal(string word) => string.Concat(word.Select(one => one == '-' ? Minus : one == 'x' ? Times : Syntax.Contains(one) ? $"\\{one}" : $"{one}"));
}

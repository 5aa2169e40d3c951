using System.Globalization;

namespace Advance.Paper.Workbook;

/// <summary>Names for tabs that every spreadsheet program takes, each only once.</summary>
internal sealed class TabNames
{
    private const int Most = 31;

    private readonly HashSet<string> used = new(StringComparer.OrdinalIgnoreCase) { "History" };

    /// <summary>A name for the next table.</summary>
    /// <param name="sheet">What its sheet is called.</param>
    /// <param name="caption">What it is called itself; may be empty. It is asked for only where the sheet has other tables.</param>
    public string Next(string sheet, string caption)
    {
        var plain = Safe(sheet);
        if (used.Add(plain))
        {
            return plain;
        }

        if (caption.Length > 0 && Safe($"{sheet} {caption}") is var both && both != plain && used.Add(both))
        {
            return both;
        }

        for (var i = 2; ; i++)
        {
            var end = string.Create(CultureInfo.InvariantCulture, $" {i}");
            var numbered = plain[..Math.Min(plain.Length, Most - end.Length)].TrimEnd() + end;
            if (used.Add(numbered))
            {
                return numbered;
            }
        }
    }

    private static string Safe(string name)
    {
        // References to a tab quote its name with straight apostrophes, and the library does not read doubled ones back.
        var letters = Cells.Clean(name).Replace('\'', '’').Select(c => c is '[' or ']' or ':' or '*' or '?' or '/' or '\\' or '\n' or '\t' ? ' ' : c);
        var safe = string.Join(' ', string.Concat(letters).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (safe.Length > Most)
        {
            safe = safe[..(char.IsHighSurrogate(safe[Most - 1]) ? Most - 1 : Most)];
        }

        safe = safe.Trim(' ', '’');
        return safe.Length == 0 ? "Table" : safe;
    }
}

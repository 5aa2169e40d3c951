using System.Globalization;

namespace Advance.Reading.Phrases;

/// <summary>Reads a text from left to right. A phrase that fails leaves its fault here and the place where it is.</summary>
internal sealed class Cursor(string original)
{
    private const int MostDigits = 12;

    /// <summary>The text made plain.</summary>
    public string Text { get; } = Normal.Of(original);

    /// <summary>The next unit to be read.</summary>
    public int At { get; set; }

    /// <summary>Why the phrase failed; null where it just is something else.</summary>
    public PhraseFault? Fault { get; private set; }

    /// <summary>Whether a comma after a number parts it from the next, and is not one that was meant as a decimal point.</summary>
    public bool CommaParts { get; set; }

    public bool IsAtEnd => At >= Text.Length;

    /// <summary>The next unit, or a NUL at the end.</summary>
    public char Now => At < Text.Length ? Text[At] : '\0';

    /// <summary>A part of the text as it was written: names keep their own quotes and dashes.</summary>
    public string Written(int from, int to) => original[from..to].Trim();

    /// <summary>Notes why the phrase fails; the first reason is kept.</summary>
    /// <returns>False, to be handed on.</returns>
    public bool Fail(PhraseFault fault)
    {
        Fault ??= fault;
        return false;
    }

    /// <summary>Skips spaces, and says whether there were any.</summary>
    public bool SkipSpaces()
    {
        var from = At;
        while (Now == ' ')
        {
            At++;
        }

        return At > from;
    }

    /// <summary>Reads a sign, if it is next.</summary>
    public bool Take(char sign)
    {
        if (Now != sign || IsAtEnd)
        {
            return false;
        }

        At++;
        return true;
    }

    /// <summary>Reads a word with the spaces before it, if it is next and stands alone.</summary>
    public bool TakeWord(string word)
    {
        var from = At;
        var end = SkipSpaces() || from == 0 || Text[from - 1] == ' ' ? At + word.Length : int.MaxValue;
        if (end <= Text.Length && Text.AsSpan(At).StartsWith(word, StringComparison.Ordinal) && (end == Text.Length || Text[end] == ' '))
        {
            At = end;
            return true;
        }

        At = from;
        return false;
    }

    /// <summary>The next word, which is not read: everything up to a space or a comma.</summary>
    public ReadOnlySpan<char> PeekWord()
    {
        var rest = Text.AsSpan(At);
        var end = rest.IndexOfAny(' ', ',');
        return end < 0 ? rest : rest[..end];
    }

    /// <summary>Reads a number without sign: <c>12</c>, <c>0.5</c>, <c>.5</c>; up to twelve digits on each side of the point.</summary>
    public bool Number(out double value)
    {
        var from = At;
        var whole = Digits();
        var decimals = 0;
        if (Now == '.' && At + 1 < Text.Length && char.IsAsciiDigit(Text[At + 1]))
        {
            At++;
            decimals = Digits();
        }

        value = 0;
        if (whole + decimals == 0)
        {
            At = from;
            return false;
        }

        if (Now == ',' && !CommaParts && At + 1 < Text.Length && char.IsAsciiDigit(Text[At + 1]))
        {
            return Fail(PhraseFaults.DecimalComma(from, Text.AsSpan(from)));
        }

        return whole <= MostDigits && decimals <= MostDigits
            ? double.TryParse(Text.AsSpan(from, At - from), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)
            : Fail(PhraseFaults.TooLong(from, At - from));
    }

    /// <summary>Reads a whole number without sign, up to nine digits.</summary>
    public bool Whole(out int value)
    {
        var from = At;
        var count = Digits();
        value = 0;
        if (count is > 0 and <= 9)
        {
            value = int.Parse(Text.AsSpan(from, count), NumberStyles.None, CultureInfo.InvariantCulture);
            return true;
        }

        At = from;
        return count > 9 && Fail(PhraseFaults.TooLong(from, count));
    }

    private int Digits()
    {
        var from = At;
        while (char.IsAsciiDigit(Now))
        {
            At++;
        }

        return At - from;
    }
}

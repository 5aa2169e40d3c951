using System.Globalization;

namespace Advance.Tests.Workings;

/// <summary>Reads a formula as it is printed, sign by sign.</summary>
internal sealed class Tokens(string text)
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private int at;

    /// <summary>Whether only space is left.</summary>
    public bool AtEnd
    {
        get
        {
            SkipSpace();
            return at == text.Length;
        }
    }

    /// <summary>What is left, for a fault.</summary>
    public string Rest => text[at..];

    /// <summary>The next sign, without taking it; NUL at the end.</summary>
    public char Next
    {
        get
        {
            SkipSpace();
            return at < text.Length ? text[at] : '\0';
        }
    }

    /// <summary>Takes one of the signs if it comes next.</summary>
    public bool Take(params ReadOnlySpan<char> signs)
    {
        if (signs.Contains(Next) && Next != '\0')
        {
            at++;
            return true;
        }

        return false;
    }

    /// <summary>Takes the sign, which must come next.</summary>
    public void Expect(char sign)
    {
        if (!Take(sign))
        {
            throw new FormulaFault($"{sign} is missing before \"{Rest}\"");
        }
    }

    /// <summary>Takes a number without a sign.</summary>
    public bool Number(out double value)
    {
        SkipSpace();
        var end = Run(letter => char.IsAsciiDigit(letter) || letter == '.');
        value = end > at ? double.Parse(text.AsSpan(at, end - at), CultureInfo.InvariantCulture) : 0;
        return Move(end);
    }

    /// <summary>Takes a name: a letter, then letters, digits, subscripts and primes. The signs for sums are no letters here.</summary>
    public bool Name(out string name)
    {
        SkipSpace();
        var end = at < text.Length && IsLetter(text[at]) ? Run(IsInName) : at;
        name = text[at..end];
        return Move(end);
    }

    /// <summary>Takes a raised whole number: <c>²</c>, <c>⁻¹</c>.</summary>
    public bool Superscript(out int power)
    {
        var start = at;
        var sign = at < text.Length && text[at] == '⁻' ? -1 : 1;
        var digits = sign < 0 ? at + 1 : at;
        power = 0;
        for (at = digits; at < text.Length && Superscripts.Contains(text[at]); at++)
        {
            power = (10 * power) + Superscripts.IndexOf(text[at]);
        }

        if (at == digits)
        {
            at = start;
            return false;
        }

        power *= sign;
        return true;
    }

    private int Run(Func<char, bool> belongs)
    {
        var end = at;
        while (end < text.Length && belongs(text[end]))
        {
            end++;
        }

        return end;
    }

    private bool Move(int end)
    {
        var moved = end > at;
        at = end;
        return moved;
    }

    private void SkipSpace() => at = Run(char.IsWhiteSpace);

    private static bool IsLetter(char letter) => char.IsLetter(letter) && letter is not ('Σ' or '∑');

    private static bool IsInName(char letter) => IsLetter(letter) || char.IsAsciiDigit(letter) || letter is >= '₀' and <= '₉' or '_' or '′';
}

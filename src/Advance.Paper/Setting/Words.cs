using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;

namespace Advance.Paper.Setting;

/// <summary>Cuts text into words at spaces, and after hyphens and slashes where a line may end.</summary>
internal static class Words
{
    private static readonly SearchValues<char> OfNumbers = SearchValues.Create("0123456789.,+-–×~≤≥<>(");

    private static readonly FrozenSet<string> Units = new[]
    {
        "m", "mm", "cm", "km", "ft", "in", "kg", "t", "lb", "lbf", "N", "kN", "kNm", "A", "mA", "kA", "V", "kV", "W", "kW", "kVA", "Ω", "mΩ", "mΩ/m", "ohm", "mohm", "Hz", "kHz", "ms", "min", "h", "dB", "%", "°C", "°F",
        "m/s", "mph", "m²", "m³", "mm²", "kPa",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>What stands before a word.</summary>
    internal enum Gap
    {
        None,
        Hyphen,
        Soft,
        Space,
        HardSpace,
    }

    /// <summary>The words of a text; the last one may be empty and tells of a space at the end.</summary>
    public static Enumerator Split(string text) => new(text);

    /// <summary>True for what is never printed: control characters and marks that turn the direction of writing.</summary>
    public static bool IsDropped(char c) =>
        c is '\u00AD' or '\uFEFF' or '\uFFFE' or '\uFFFF' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069')
        || (char.IsControl(c) && !IsSpace(c));

    private static bool IsSpace(char c) => c is ' ' or '\t' or '\n' or '\r' or '\f' or '\v' or '\u0085' or '\u200B' || IsWideSpace(c);

    private static bool IsWideSpace(char c) => c is >= '\u2000' and <= '\u200A' and not '\u2007' or '\u2028' or '\u2029' or '\u3000' or '\u1680' or '\u205F';

    private static bool IsHardSpace(char c) => c is '\u00A0' or '\u202F' or '\u2007' or '\u2060';

    /// <summary>A part of a text.</summary>
    internal readonly record struct Range(int Start, int Length, Gap Before)
    {
        public ReadOnlySpan<char> Of(string text) => text.AsSpan(Start, Length);
    }

    /// <summary>Walks over the words of a text.</summary>
    internal struct Enumerator(string text)
    {
        private int at;
        private bool wasSoft;

        public Range Current { get; private set; }

        public readonly Enumerator GetEnumerator() => this;

        public bool MoveNext()
        {
            var gap = !wasSoft ? Gap.None : text[at - 1] is '-' or '\u2010' ? Gap.Hyphen : Gap.Soft;
            wasSoft = false;
            for (; at < text.Length; at++)
            {
                if (IsSpace(text[at]))
                {
                    gap = gap == Gap.HardSpace ? gap : Gap.Space;
                }
                else if (IsHardSpace(text[at]))
                {
                    gap = Gap.HardSpace;
                }
                else if (!IsDropped(text[at]))
                {
                    break;
                }
            }

            var start = at;
            while (at < text.Length && !IsSpace(text[at]) && !IsHardSpace(text[at]) && !IsDropped(text[at]) && !wasSoft)
            {
                wasSoft = EndsLine(at++);
            }

            if (gap == Gap.Space && IsUnitOf(start))
            {
                gap = Gap.HardSpace;
            }

            Current = new Range(start, at - start, gap);
            return at > start || gap is Gap.Space or Gap.HardSpace;
        }

        /// <summary>
        /// True when a line may end after a character: after a hyphen between words, so that P-02 and top-10 stay whole; after a slash
        /// between longer words; between ideographs.
        /// </summary>
        private readonly bool EndsLine(int i)
        {
            if (i + 1 >= text.Length)
            {
                return false;
            }

            if (text[i] is '-' or '\u2010' or '/')
            {
                return IsWordAround(i);
            }

            return text[i] is >= '\u2E80' and < '\uA000' && char.GetUnicodeCategory(text[i + 1]) == UnicodeCategory.OtherLetter;
        }

        // A number and its unit stand on one line.
        private readonly bool IsUnitOf(int start) =>
            start >= 2 && text[start - 1] == ' ' && IsNumberBefore(start - 2) && Units.Contains(text.AsSpan(start, at - start).TrimEnd(",.;:)").ToString());

        private readonly bool IsNumberBefore(int end)
        {
            var first = end;
            while (first > 0 && !IsSpace(text[first - 1]))
            {
                first--;
            }

            return char.IsAsciiDigit(text[end]) && !text.AsSpan(first, end - first).ContainsAnyExcept(OfNumbers);
        }

        private readonly bool IsWordAround(int i) =>
            i >= 2 && i + 2 < text.Length
            && char.IsLetter(text[i - 1]) && char.IsLetter(text[i - 2])
            && char.IsLetter(text[i + 1]) && char.IsLetter(text[i + 2]);
    }
}

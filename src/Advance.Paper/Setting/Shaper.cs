using System.Globalization;
using System.Text;
using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace Advance.Paper.Setting;

/// <summary>Shapes words, each one once in a printing. Not for use by two threads at a time; several may share what they know.</summary>
internal sealed class Shaper : IDisposable
{
    // Figures of one width line up in columns; contextual alternates would turn "10x4" and "->" into something else than was written.
    private static readonly Feature[] Features =
    [
        new(new Tag('t', 'n', 'u', 'm'), 1),
        new(new Tag('k', 'e', 'r', 'n'), 1),
        new(new Tag('c', 'a', 'l', 't'), 0),
        new(new Tag('l', 'i', 'g', 'a'), 0),
    ];

    private static readonly Language English = new("en");

    private readonly FaceSet faces;
    private readonly Faults faults;
    private readonly Buffer buffer = new();
    private readonly KnownWords known;

    /// <summary>A shaper.</summary>
    /// <param name="faces">The fonts.</param>
    /// <param name="faults">Takes up which letters no font has.</param>
    /// <param name="known">Words that need not be shaped again; null for none.</param>
    public Shaper(FaceSet faces, Faults faults, KnownWords? known = null)
    {
        this.faces = faces;
        this.faults = faults;
        this.known = known ?? new KnownWords();
    }

    /// <summary>Shapes a word.</summary>
    /// <param name="word">Without spaces and control characters; see <see cref="Composer"/>.</param>
    /// <param name="isStrong">True for the bold weight.</param>
    public ShapedWord Shape(ReadOnlySpan<char> word, bool isStrong)
    {
        var shaped = known.Find(word, isStrong) ?? known.Keep(ShapeNew(word.ToString(), isStrong), isStrong);
        // Told by whoever uses the word and not by whoever happened to shape it first.
        foreach (var fault in shaped.Lacks)
        {
            faults.Add(FaultKind.MissingGlyph, fault);
        }

        return shaped;
    }

    /// <summary>Width of a space in 1/1000 pt at a size in 1/1000 pt.</summary>
    public int Space(TypeStyle style)
    {
        var face = faces.Primary(style.IsStrong);
        return (int)((long)face.Space * style.Size / face.UnitsPerEm);
    }

    public void Dispose() => buffer.Dispose();

    private ShapedWord ShapeNew(string text, bool isStrong)
    {
        var runs = new List<ShapedRun>();
        var rightToLeft = false;
        var byteStart = 0;
        var lacks = new List<string>();
        foreach (var (start, length, face) in ByFace(text, isStrong, lacks))
        {
            var part = text.AsSpan(start, length);
            runs.Add(ShapePart(part, face, byteStart, out var partIsRightToLeft));
            rightToLeft |= partIsRightToLeft;
            byteStart += Encoding.UTF8.GetByteCount(part);
        }

        if (rightToLeft)
        {
            runs.Reverse();
        }

        return new ShapedWord(text, Encoding.UTF8.GetBytes(text), [.. runs], rightToLeft) { Lacks = [.. lacks] };
    }

    private ShapedRun ShapePart(ReadOnlySpan<char> part, Face face, int byteStart, out bool isRightToLeft)
    {
        buffer.Reset();
        buffer.ClusterLevel = ClusterLevel.MonotoneGraphemes;
        Span<byte> utf8 = stackalloc byte[256];
        var byteCount = Encoding.UTF8.GetByteCount(part);
        if (byteCount > utf8.Length)
        {
            utf8 = new byte[byteCount];
        }

        utf8 = utf8[..Encoding.UTF8.GetBytes(part, utf8)];
        buffer.AddUtf8(utf8);
        buffer.GuessSegmentProperties();
        // Set after the guess, which would ask the machine for its language.
        buffer.Language = English;
        isRightToLeft = buffer.Direction == Direction.RightToLeft;
        face.Shape(buffer, Features);
        return Read(face, byteStart);
    }

    private ShapedRun Read(Face face, int byteStart)
    {
        var infos = buffer.GetGlyphInfoSpan();
        var positions = buffer.GetGlyphPositionSpan();
        var glyphs = new ushort[infos.Length];
        var advances = new int[infos.Length];
        var clusters = new uint[infos.Length];
        int[]? offsetsX = null, offsetsY = null;
        var units = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            glyphs[i] = (ushort)infos[i].Codepoint;
            clusters[i] = (uint)(infos[i].Cluster + byteStart);
            advances[i] = positions[i].XAdvance;
            units += advances[i];
            if (positions[i].XOffset != 0)
            {
                (offsetsX ??= new int[infos.Length])[i] = positions[i].XOffset;
            }

            if (positions[i].YOffset != 0)
            {
                (offsetsY ??= new int[infos.Length])[i] = positions[i].YOffset;
            }
        }

        return new ShapedRun(face, glyphs, advances, offsetsX, offsetsY, clusters, units);
    }

    /// <summary>Cuts a word where another font has to step in; what is written as one letter stays in one font.</summary>
    private List<(int Start, int Length, Face Face)> ByFace(string text, bool isStrong, List<string> lacks)
    {
        var parts = new List<(int Start, int Length, Face Face)>(1);
        for (var at = 0; at < text.Length;)
        {
            var length = StringInfo.GetNextTextElementLength(text, at);
            var face = FaceFor(text, at, length, isStrong, lacks);
            if (parts.Count > 0 && ReferenceEquals(parts[^1].Face, face))
            {
                parts[^1] = parts[^1] with { Length = parts[^1].Length + length };
            }
            else
            {
                parts.Add((at, length, face));
            }

            at += length;
        }

        return parts;
    }

    private Face FaceFor(string text, int at, int length, bool isStrong, List<string> lacks)
    {
        if (!Rune.TryGetRuneAt(text, at, out var rune))
        {
            return faces.Primary(isStrong);
        }

        if (faces.For(rune, isStrong) is { } face)
        {
            return face;
        }

        lacks.Add($"No font has the letter {text.Substring(at, length)} (U+{rune.Value:X4}) in \"{text}\".");
        return faces.Primary(isStrong);
    }
}

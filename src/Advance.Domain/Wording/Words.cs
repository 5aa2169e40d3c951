using System.Runtime.CompilerServices;

namespace Advance.Domain.Wording;

/// <summary>
/// A sentence with typed holes, kept as an interpolated string is written, so that units, decimal sign and language come when it is
/// printed: <c>Words says = $"needs {need} and owns {owned}";</c>
/// </summary>
[InterpolatedStringHandler]
public sealed class Words : IEquatable<Words>
{
    private readonly List<object> parts;

    /// <summary>Called by the compiler.</summary>
    public Words(int literalLength, int formattedCount) => parts = new(Math.Min(literalLength, 1) + (2 * formattedCount));

    private Words(string text) => parts = [text];

    /// <summary>Literal text and values, in order.</summary>
    public IReadOnlyList<object> Parts => parts;

    /// <summary>Plain text, without holes.</summary>
    public static implicit operator Words(string text) => FromString(text);

    /// <summary>Plain text, without holes.</summary>
    public static Words FromString(string text) => new(text);

    /// <summary>The same as writing <c>Words w = $"…"</c>, where a target type is wanted.</summary>
    public static Words Of(Words words) => words;

    /// <summary>Called by the compiler.</summary>
    public void AppendLiteral(string value) => parts.Add(value);

    /// <summary>Called by the compiler.</summary>
    /// <exception cref="ArgumentNullException">An unknown value: say in words that it is unknown.</exception>
    public void AppendFormatted<T>(T value)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (value is Words inner)
        {
            parts.AddRange(inner.parts);
        }
        else
        {
            parts.Add(value);
        }
    }

    /// <summary>As said in metric units; for tests and for comparing.</summary>
    public override string ToString() => Speech.Metric.Say(this);

    /// <inheritdoc/>
    public bool Equals(Words? other) => other is not null && string.Equals(ToString(), other.ToString(), StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Words);

    /// <inheritdoc/>
    public override int GetHashCode() => parts.Count;
}

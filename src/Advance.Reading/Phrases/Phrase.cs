using System.Diagnostics.CodeAnalysis;

namespace Advance.Reading.Phrases;

/// <summary>Reads a value at the cursor.</summary>
/// <returns>False where it is something else; then the cursor may hold the reason.</returns>
internal delegate bool Scan<T>(Cursor cursor, [MaybeNullWhen(false)] out T value);

/// <summary>A small notation: how it is called, what it looks like, and examples of it.</summary>
/// <param name="name">The name in the schema: <c>set-time</c>.</param>
/// <param name="words">What it is, with its article, to follow on "this is not": <c>a time and a length</c>.</param>
/// <param name="pattern">A regular expression for all that may be written, without anchors, for the schema alone.</param>
/// <param name="examples">At least one; the first is quoted in findings.</param>
internal abstract class Phrase(string name, string words, string pattern, IReadOnlyList<string> examples)
{
    public string Name { get; } = name;

    public string Words { get; } = words;

    public string Pattern { get; } = pattern;

    public IReadOnlyList<string> Examples { get; } = examples;

    /// <summary>What it takes, for the key reference, in Markdown.</summary>
    public virtual string Takes => $"{Name}, as in `{Examples[0]}`";

    /// <summary>The fault of a text; null where it has none. For those who do not need the value.</summary>
    public abstract PhraseFault? FaultOf(string text);
}

/// <summary>A small notation and the value that it gives.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="name">See <see cref="Phrase"/>.</param>
/// <param name="words">See <see cref="Phrase"/>.</param>
/// <param name="pattern">See <see cref="Phrase"/>.</param>
/// <param name="examples">See <see cref="Phrase"/>.</param>
/// <param name="scan">Reads it at a cursor.</param>
/// <param name="takes">What it takes, for the key reference, where its name and its first example do not say it well.</param>
internal sealed class Phrase<T>(string name, string words, string pattern, IReadOnlyList<string> examples, Scan<T> scan, string? takes = null)
    : Phrase(name, words, pattern, examples)
    where T : notnull
{
    /// <inheritdoc/>
    public override string Takes => takes ?? base.Takes;

    /// <summary>Reads the notation inside a larger one.</summary>
    public Scan<T> Scan { get; } = scan;

    /// <summary>Reads a whole text.</summary>
    /// <param name="text">Without spaces at its ends.</param>
    /// <param name="value">The value.</param>
    /// <param name="fault">Why it is none.</param>
    public bool TryRead(string text, [MaybeNullWhen(false)] out T value, [NotNullWhen(false)] out PhraseFault? fault)
    {
        var cursor = new Cursor(text);
        var isRead = Scan(cursor, out value);
        cursor.SkipSpaces();
        fault = isRead && cursor.IsAtEnd ? null : cursor.Fault ?? Unread(cursor, isRead);
        return fault is null;
    }

    /// <inheritdoc/>
    public override PhraseFault? FaultOf(string text) => TryRead(text, out _, out var fault) ? null : fault;

    private PhraseFault Unread(Cursor cursor, bool isRead)
    {
        var text = cursor.Written(0, cursor.Text.Length);
        return isRead
            ? PhraseFaults.LeftOver(cursor.At, cursor.Written(cursor.At, cursor.Text.Length), Words, Examples[0])
            : PhraseFaults.NotThis(text, Words, Examples[0]);
    }
}

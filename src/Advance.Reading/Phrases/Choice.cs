using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Naming;

namespace Advance.Reading.Phrases;

/// <summary>One of a few words.</summary>
internal static class Choice
{
    /// <summary>Yes or no.</summary>
    public static readonly Phrase<bool> YesNo = Of("yes-no", "yes or no", ("yes", true), ("no", false));

    /// <summary>Makes the phrase of a few words, each with its value. The words may hold spaces.</summary>
    public static Phrase<T> Of<T>(string name, string words, params (string Word, T Value)[] choices)
        where T : notnull =>
        new(name, words, Patterns.AnyOf(choices.Select(choice => choice.Word)), [.. choices.Select(choice => choice.Word)],
            (Cursor cursor, [MaybeNullWhen(false)] out T value) => Read(cursor, choices, out value),
            takes: $"one of {string.Join(", ", choices.Select(choice => $"`{choice.Word}`"))}");

    private static bool Read<T>(Cursor cursor, (string Word, T Value)[] choices, [MaybeNullWhen(false)] out T value)
    {
        cursor.SkipSpaces();
        var rest = cursor.Text[cursor.At..].TrimEnd();
        foreach (var (word, meaning) in choices)
        {
            if (rest == word)
            {
                cursor.At += word.Length;
                value = meaning;
                return true;
            }
        }

        value = default;
        var words = choices.Select(choice => choice.Word).ToList();
        return cursor.Fail(PhraseFaults.NotAWord(cursor.At, rest, string.Join(", ", words), Nearest.To(rest, words)));
    }
}

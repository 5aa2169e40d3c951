using System.Collections.Concurrent;

namespace Advance.Paper.Setting;

/// <summary>
/// The words that were shaped in a printing, for the shapers of all its sheets. Safe for many threads: words never change, and a word that two
/// of them shape at once comes out alike for both, so that it does not matter whose is kept.
/// </summary>
internal sealed class KnownWords
{
    private readonly ConcurrentDictionary<string, ShapedWord>.AlternateLookup<ReadOnlySpan<char>> regular = Empty();
    private readonly ConcurrentDictionary<string, ShapedWord>.AlternateLookup<ReadOnlySpan<char>> strong = Empty();

    /// <summary>A word that was shaped; null where it was not.</summary>
    public ShapedWord? Find(ReadOnlySpan<char> word, bool isStrong) =>
        (isStrong ? strong : regular).TryGetValue(word, out var shaped) ? shaped : null;

    /// <summary>Keeps a word; answers the one that is kept, so that each word is one object.</summary>
    public ShapedWord Keep(ShapedWord word, bool isStrong) => (isStrong ? strong : regular).Dictionary.GetOrAdd(word.Text, word);

    private static ConcurrentDictionary<string, ShapedWord>.AlternateLookup<ReadOnlySpan<char>> Empty() =>
        new ConcurrentDictionary<string, ShapedWord>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
}

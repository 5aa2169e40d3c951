using System.Text.Json;

namespace Advance.Golden;

/// <summary>Compares two packages cell by cell.</summary>
internal sealed class Cells(string subject)
{
    // What stands in the head of a table is called this in its view.
    private const string Head = "rests-on";

    /// <summary>Cells and words that differ, with whether the first package had tagged them, or the head of the table they stand in.</summary>
    /// <param name="before">The views of the first.</param>
    /// <param name="after">The views of the second.</param>
    /// <param name="subject">The open question that was answered otherwise, as heads of tables say it.</param>
    public static IReadOnlyList<(string Path, string Before, string After, bool IsTagged)> Moved(JsonElement before, JsonElement after, string subject) =>
        [.. new Cells(subject).Moved("", before, after, isTagged: false)];

    private IEnumerable<(string Path, string Before, string After, bool IsTagged)> Moved(string path, JsonElement before, JsonElement after, bool isTagged)
    {
        if (before.ValueKind != after.ValueKind)
        {
            return [(path, before.ToString(), after.ToString(), isTagged)];
        }

        return before.ValueKind switch
        {
            JsonValueKind.Object => MovedIn(path, before, after, isTagged || IsTagged(before)),
            JsonValueKind.Array => MovedAlong(path, before, after, isTagged),
            _ => before.ToString() == after.ToString() ? [] : [(path, before.ToString(), after.ToString(), isTagged)],
        };
    }

    private IEnumerable<(string Path, string Before, string After, bool IsTagged)> MovedIn(string path, JsonElement before, JsonElement after, bool isTagged) =>
        before.EnumerateObject()
            .Where(member => member.Name is not ("tbc" or Head))
            .SelectMany(member => after.TryGetProperty(member.Name, out var other)
                ? Moved($"{path}/{member.Name}", member.Value, other, isTagged)
                : [($"{path}/{member.Name}", member.Value.ToString(), "(none)", isTagged)]);

    private IEnumerable<(string Path, string Before, string After, bool IsTagged)> MovedAlong(string path, JsonElement before, JsonElement after, bool isTagged)
    {
        for (var index = 0; index < Math.Max(before.GetArrayLength(), after.GetArrayLength()); index++)
        {
            var here = $"{path}/{index}";
            if (index >= before.GetArrayLength() || index >= after.GetArrayLength())
            {
                yield return (here, "(a row more or less)", "", isTagged);
                continue;
            }

            foreach (var moved in Moved(here, before[index], after[index], isTagged))
            {
                yield return moved;
            }
        }
    }

    // A cell carries its own tag; the head of a table names the question for all its cells.
    private bool IsTagged(JsonElement element) =>
        element.TryGetProperty("tbc", out _)
        || (element.TryGetProperty(Head, out var head) && head.ValueKind == JsonValueKind.Object && head.TryGetProperty("tbc", out _)
            && head.GetProperty("text").GetString()!.Contains(subject, StringComparison.Ordinal));
}

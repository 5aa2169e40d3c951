using System.Text.Json.Nodes;
using Advance.Domain.Facts;
using Advance.Domain.Findings;

namespace Advance.Reading.Shapes;

/// <summary>Keys that are written together or not at all, and others that may only be written with them.</summary>
/// <param name="together">All or none.</param>
/// <param name="with">Only where the others are.</param>
internal sealed class KeysTogether(IReadOnlyList<string> together, IReadOnlyList<string> with) : KeyRule
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Keys => [.. together, .. with];

    /// <inheritdoc/>
    public override Finding? Broken(Func<string, bool> isWritten, Mark at, string where) =>
        Keys.FirstOrDefault(isWritten) is { } written && together.FirstOrDefault(key => !isWritten(key)) is { } missing
            ? ShapeFindings.NotTogether(at, written, missing, where, together)
            : null;

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(AllWritten(together), NoneWritten(Keys)) };

    /// <inheritdoc/>
    public override void Settle(JsonObject sample, Func<string, JsonNode> make, Choices choices)
    {
        var isWritten = choices.Next(2) == 1;
        foreach (var key in isWritten ? together.Where(key => !sample.ContainsKey(key)) : [])
        {
            sample[key] = make(key);
        }

        foreach (var key in isWritten ? [] : Keys)
        {
            sample.Remove(key);
        }
    }
}

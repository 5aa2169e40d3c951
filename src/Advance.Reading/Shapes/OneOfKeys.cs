using System.Text.Json.Nodes;
using Advance.Domain.Facts;
using Advance.Domain.Findings;

namespace Advance.Reading.Shapes;

/// <summary>Two ways to say the same: not both are written, and one must be where one is needed.</summary>
internal sealed class OneOfKeys(string one, string other, bool isNeeded) : KeyRule
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Keys => [one, other];

    /// <inheritdoc/>
    public override Finding? Broken(Func<string, bool> isWritten, Mark at, string where) =>
        (isWritten(one), isWritten(other)) switch
        {
            (true, true) => ShapeFindings.TwoWays(at, one, other),
            (false, false) when isNeeded => ShapeFindings.MissingEither(at, one, other, where),
            _ => null,
        };

    /// <inheritdoc/>
    public override JsonObject Schema()
    {
        var ways = new JsonArray(NoneWritten([one]), NoneWritten([other]));
        return isNeeded
            ? new() { ["oneOf"] = new JsonArray(AllWritten([one]), AllWritten([other])) }
            : new() { ["anyOf"] = ways };
    }

    /// <inheritdoc/>
    public override void Settle(JsonObject sample, Func<string, JsonNode> make, Choices choices)
    {
        var isOther = choices.Next(2) == 1;
        sample.Remove(isOther ? one : other);
        var kept = isOther ? other : one;
        if (isNeeded && !sample.ContainsKey(kept))
        {
            sample[kept] = make(kept);
        }
    }
}

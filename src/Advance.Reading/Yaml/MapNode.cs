using Advance.Domain.Facts;

namespace Advance.Reading.Yaml;

/// <summary>Keys with their values, in the order of the file; no key stands twice.</summary>
/// <param name="entries">The readable entries.</param>
/// <param name="isPartial">Whether an entry was left out because it could not be made out: then nothing can be said to be missing.</param>
/// <param name="at">See <see cref="Node"/>.</param>
/// <param name="weight">See <see cref="Node"/>.</param>
internal sealed class MapNode(IReadOnlyList<MapEntry> entries, bool isPartial, Mark at, int weight) : Node(at, weight)
{
    public IReadOnlyList<MapEntry> Entries { get; } = entries;

    public bool IsPartial { get; } = isPartial;

    public override string Kind => "a map of keys";
}

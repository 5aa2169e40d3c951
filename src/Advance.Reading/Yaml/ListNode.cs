using Advance.Domain.Facts;

namespace Advance.Reading.Yaml;

/// <summary>A list.</summary>
internal sealed class ListNode(IReadOnlyList<Node> items, Mark at, int weight) : Node(at, weight)
{
    public IReadOnlyList<Node> Items { get; } = items;

    public override string Kind => "a list";
}

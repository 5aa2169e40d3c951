using System.Collections;
using System.Collections.Immutable;

namespace Advance.Domain.Facts;

/// <summary>An ordered set of doubts: what a figure rests on. It only grows as figures are built from figures.</summary>
public sealed class Doubts : IReadOnlyCollection<Doubt>
{
    /// <summary>No doubt at all.</summary>
    public static readonly Doubts None = new([]);

    private readonly ImmutableSortedSet<Doubt> items;

    private Doubts(ImmutableSortedSet<Doubt> items) => this.items = items;

    /// <summary>How many different doubts.</summary>
    public int Count => items.Count;

    /// <summary>Whether anything rests on an open question.</summary>
    public bool Any => !items.IsEmpty;

    /// <summary>The set of one doubt, or <see cref="None"/> for null.</summary>
    public static Doubts Of(Doubt? doubt) => doubt is null ? None : new([doubt]);

    /// <summary>The union of both sets.</summary>
    public Doubts With(Doubts other)
    {
        if (other.items.IsEmpty)
        {
            return this;
        }

        return items.IsEmpty ? other : new(items.Union(other.items));
    }

    /// <inheritdoc/>
    public IEnumerator<Doubt> GetEnumerator() => items.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

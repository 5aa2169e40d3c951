using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;

namespace Advance.Paper.Layout;

/// <summary>What blocks are set with: type, words, and the size of the page's body.</summary>
/// <param name="Composer">Makes text of inlines.</param>
/// <param name="Faults">Takes up what cannot be set.</param>
/// <param name="Words">What the printer adds by itself.</param>
/// <param name="Height">Height of a page's body in 1/1000 pt; nothing that is kept whole is taller.</param>
/// <param name="MaySplit">True when a table that is too wide may be split with its key columns repeated.</param>
internal sealed record Room(Composer Composer, Faults Faults, Wording Words, int Height, bool MaySplit)
{
    private int groups;

    /// <summary>True once a table did not fit its width.</summary>
    public bool IsTooNarrow { get; set; }

    /// <summary>Lays pictures out.</summary>
    public required PictureSetter Pictures { get; init; }

    public TypeScale Scale => Composer.Scale;

    /// <summary>A number for a group of strips, 1 and up.</summary>
    public int NextGroup() => ++groups;
}

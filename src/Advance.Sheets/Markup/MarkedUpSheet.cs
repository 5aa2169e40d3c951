using Advance.Paper.Tree;

namespace Advance.Sheets.Markup;

/// <summary>A sheet as a template wrote it, still without its head and foot.</summary>
/// <param name="Id">Unique in what was read together.</param>
/// <param name="Title">Its name.</param>
/// <param name="For">For whom it is, in words.</param>
/// <param name="Readers">Whose copies hold it.</param>
/// <param name="Blocks">From top to bottom.</param>
public sealed record MarkedUpSheet(string Id, string Title, string For, IReadOnlyList<string> Readers, IReadOnlyList<Block> Blocks)
{
    /// <summary>The workbook that holds its tables; null for none. Default null.</summary>
    public string? Workbook { get; init; }

    /// <summary>How far away it is read. Default desk.</summary>
    public TypeClass Class { get; init; }

    /// <summary>Its paper; null for the gig's.</summary>
    public PageSize? Paper { get; init; }

    /// <summary>Which way up. Default portrait.</summary>
    public Orientation Orientation { get; init; }

    /// <summary>Paper and size of type.</summary>
    /// <param name="paper">The gig's paper.</param>
    public SheetSetup Setup(PageSize paper) => new(Paper ?? paper, Orientation, Class);
}

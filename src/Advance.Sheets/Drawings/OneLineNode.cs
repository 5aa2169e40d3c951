namespace Advance.Sheets.Drawings;

/// <summary>A box of the one-line: a service, a distribution, an outlet, or what hangs on it.</summary>
/// <param name="Id">Unique in the drawing.</param>
/// <param name="Lines">What stands in it; the first is its name.</param>
/// <param name="Lead">What leads to it, label first; empty where it is plugged in itself or belongs to the box before.</param>
/// <param name="Looks">How it is drawn.</param>
/// <param name="Children">What hangs on it, in order.</param>
internal sealed record OneLineNode(string Id, IReadOnlyList<string> Lines, IReadOnlyList<string> Lead, OneLineLook Looks, IReadOnlyList<OneLineNode> Children)
{
    /// <summary>What it is called where it is named apart from what it belongs to: <c>PD1 outlet 3</c>.</summary>
    public string Name { get; init; } = Lines[0];

    /// <summary>How many ends it has: itself, where nothing hangs on it.</summary>
    public int Ends => Children.Count == 0 ? 1 : Children.Sum(child => child.Ends);
}

namespace Advance.Paper.Layout;

/// <summary>The strips of a page, without what is repeated over them.</summary>
/// <param name="All">The strips of the sheet.</param>
/// <param name="Start">The first one on the page.</param>
/// <param name="Count">How many there are, 1 or more.</param>
internal readonly record struct PageRange(IReadOnlyList<Strip> All, int Start, int Count)
{
    /// <summary>The strips with what is repeated over the first.</summary>
    public List<Strip> WithHeads()
    {
        var strips = new List<Strip>(All[Start].Heads);
        for (var i = Start; i < Start + Count; i++)
        {
            strips.Add(All[i]);
        }

        return strips;
    }

    /// <summary>What they take, in 1/1000 pt.</summary>
    public int Height()
    {
        var height = All[Start].HeadHeight() + All[Start].Height;
        for (var i = Start + 1; i < Start + Count; i++)
        {
            height += All[i].Gap + All[i].Height;
        }

        return height;
    }
}

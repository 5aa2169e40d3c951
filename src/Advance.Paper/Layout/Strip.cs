namespace Advance.Paper.Layout;

/// <summary>A band over the width of where it stands, never parted. Pages are made of strips.</summary>
internal sealed class Strip(int height, List<Mark> marks)
{
    /// <summary>In 1/1000 pt.</summary>
    public int Height { get; } = height;

    /// <summary>What is drawn, measured from the strip's upper left corner.</summary>
    public List<Mark> Marks { get; } = marks;

    /// <summary>Room over it in 1/1000 pt, dropped at the top of a page.</summary>
    public int Gap { get; set; }

    /// <summary>True when the next strip stands on the same page if at all possible.</summary>
    public bool KeepsNext { get; set; }

    /// <summary>True when what belongs to one thing is parted where a page ends after it: so only where that spares a page.</summary>
    public bool IsInside { get; set; }

    /// <summary>True for what is read beside something else: a caution, a remark.</summary>
    public bool IsWarning { get; init; }

    /// <summary>True for what a page is not turned to for: warnings, and the lines that explain or are signed.</summary>
    public bool IsAside { get; init; }

    /// <summary>True when it begins a page.</summary>
    public bool BeginsPage { get; set; }

    /// <summary>What is repeated over it when it stands first on a page, from top to bottom.</summary>
    public IReadOnlyList<Strip> Heads { get; init; } = [];

    /// <summary>Strips of one group have one number; 0 is no group.</summary>
    public int Group { get; init; }

    /// <summary>Its place in the group, from 0.</summary>
    public int InGroup { get; init; }

    /// <summary>How many strips its group has.</summary>
    public int GroupCount { get; init; }

    /// <summary>Height of what is repeated over it.</summary>
    public int HeadHeight()
    {
        var sum = 0;
        foreach (var head in Heads)
        {
            sum += head.Height;
        }

        return sum;
    }
}

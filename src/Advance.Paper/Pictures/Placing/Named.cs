namespace Advance.Paper.Pictures.Placing;

/// <summary>A symbol that wants a label.</summary>
/// <param name="Id">Of the symbol.</param>
/// <param name="Label">What names it.</param>
/// <param name="Outlines">Its own lines.</param>
/// <param name="IsArea">True when things stand in it.</param>
/// <param name="IsDark">True when its inside is no ground for black text.</param>
/// <param name="Width">Of the label, in 0.1 mm.</param>
/// <param name="Height">Of the label, in 0.1 mm.</param>
internal sealed record Named(string Id, Label Label, IReadOnlyList<Outline> Outlines, bool IsArea, bool IsDark, int Width, int Height)
{
    public Box Bounds { get; } = Outlines.Aggregate(Box.Nothing, (box, outline) => box.With(outline.Bounds));

    /// <summary>True when a box lies on none of its lines and not in it.</summary>
    public bool IsOutside(Box box)
    {
        foreach (var outline in Outlines)
        {
            if (IsArea ? outline.LineMeets(box) : outline.Meets(box))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A leader to the middle, cut off a little before it comes to the first of the symbol's own lines.</summary>
    public Segment UpToEdge(Segment leader)
    {
        const int clear = 2;
        var nearest = leader;
        foreach (var outline in Outlines)
        {
            if (outline.Meeting(leader) is { } cut && cut.LengthSquared < nearest.LengthSquared)
            {
                nearest = cut;
            }
        }

        return nearest == leader ? leader : nearest.Shortened(clear);
    }

    /// <summary>True when a box lies inside of its widest line and on none of the others.</summary>
    public bool IsInside(Box box)
    {
        if (!Bounds.Holds(box))
        {
            return false;
        }

        var isHeld = false;
        foreach (var outline in Outlines)
        {
            if (outline.LineMeets(box))
            {
                return false;
            }

            isHeld |= outline.Meets(box);
        }

        return isHeld;
    }
}

namespace Advance.Paper.Pictures.Placing;

/// <summary>Something that labels and leaders keep clear of.</summary>
/// <param name="Owner">The id of the symbol that it belongs to; empty for what belongs to none.</param>
/// <param name="Bounds">The box around it.</param>
internal abstract record Obstacle(string Owner, Box Bounds)
{
    /// <summary>True when it is in the way of a label.</summary>
    public abstract bool Meets(Box box);

    /// <summary>True when it is in the way of a leader.</summary>
    public abstract bool Meets(Segment line);

    /// <summary>True when a point lies inside of it.</summary>
    public virtual bool Holds(int x, int y) => false;

    /// <summary>A thing drawn: its line and its inside.</summary>
    internal sealed record Thing(string Owner, Outline Outline) : Obstacle(Owner, Outline.Bounds)
    {
        public override bool Meets(Box box) => Outline.Meets(box);

        public override bool Meets(Segment line) => Outline.Meets(line);

        public override bool Holds(int x, int y) => Outline.Holds(x, y);
    }

    /// <summary>Only the line of something, as of an area that others stand in. Leaders may pass it.</summary>
    internal sealed record Edge(string Owner, Outline Outline) : Obstacle(Owner, Outline.Bounds)
    {
        public override bool Meets(Box box) => Outline.LineMeets(box);

        public override bool Meets(Segment line) => false;
    }

    /// <summary>Text.</summary>
    internal sealed record Words(string Owner, Box Bounds) : Obstacle(Owner, Bounds)
    {
        public override bool Meets(Box box) => Bounds.Meets(box);

        public override bool Meets(Segment line) => line.Meets(Bounds);
    }

    /// <summary>A leader or a dimension line. Leaders do not cross it.</summary>
    internal sealed record Wire(string Owner, Segment Line) : Obstacle(Owner, Line.Bounds)
    {
        public override bool Meets(Box box) => Line.Meets(box);

        public override bool Meets(Segment line) => Line.Crosses(line);
    }
}

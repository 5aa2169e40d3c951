using UnitsNet;

namespace Advance.Domain.Places;

/// <summary>Where something stands or hangs, as it was said. Planning turns it into a point.</summary>
public abstract record Place
{
    private Place()
    {
    }

    /// <summary>In an area of the stage: <c>USR</c>.</summary>
    /// <param name="Area">One of nine.</param>
    public sealed record AtArea(StageArea Area) : Place;

    /// <summary>Where a named thing is: <c>at drum riser</c>, or just <c>drums</c>.</summary>
    /// <param name="Name">The thing's name as written.</param>
    public sealed record AtThing(string Name) : Place;

    /// <summary>A point from a drawing: <c>[1.2 m, 4 m, 6.5 m]</c>.</summary>
    /// <param name="X">To stage left, from the centre line.</param>
    /// <param name="Y">Upstage, from the downstage edge.</param>
    /// <param name="Z">Up, from the floor; null where only two were written.</param>
    public sealed record AtPoint(Length X, Length Y, Length? Z) : Place;

    /// <summary>Measured on the ground: <c>SR 4.6 m US 0.4 m</c>, <c>DS 16 m</c>, <c>4.6 m off centre DS 0.4 m</c>, <c>6 m US of hall door</c>.</summary>
    /// <param name="Sideways">From the centre line, never negative; 0 where nothing was said.</param>
    /// <param name="Side">To which side; null on the centre line, and for <c>off centre</c>, where the thing's own side decides.</param>
    /// <param name="Upstage">Upstage of the downstage edge; negative is downstage of it; 0 where nothing was said.</param>
    /// <param name="Of">The named thing that both are measured from; null for the stage.</param>
    public sealed record Measured(Length Sideways, Side? Side, Length Upstage, string? Of) : Place;

    /// <summary>In the middle of the stage, or of whatever holds the thing: <c>centre</c>.</summary>
    public sealed record Centre : Place
    {
        /// <summary>The only one.</summary>
        public static readonly Centre It = new();
    }
}

namespace Advance.Paper.Pictures;

/// <summary>
/// A picture in millimetres of the real thing, y downwards. The scale is found when the room on the page is known; line weights and the
/// size of text are those of the paper and do not shrink with it.
/// </summary>
/// <param name="Title">What the picture shows, in words, for those who cannot see it.</param>
/// <param name="Layers">From back to front.</param>
public sealed record Scene(string Title, IReadOnlyList<Layer> Layers)
{
    /// <summary>How the scale is chosen. Default to a usual ratio.</summary>
    public Scaling Scaling { get; init; } = Scaling.Ratio;

    /// <summary>The unit of the scale bar. Default metres. Only asked for with <see cref="Scaling.Ratio"/>.</summary>
    public BarUnit BarUnit { get; init; }
}

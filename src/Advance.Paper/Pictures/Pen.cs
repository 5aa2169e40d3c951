namespace Advance.Paper.Pictures;

/// <summary>A line: its weight and whether it is broken.</summary>
/// <param name="Weight">How heavy.</param>
/// <param name="Dash">How broken. Default not at all.</param>
public sealed record Pen(LineWeight Weight, Dash Dash = Dash.Solid)
{
    /// <summary>No line.</summary>
    public static Pen None { get; } = new(LineWeight.None);

    /// <summary>For grids.</summary>
    public static Pen Hair { get; } = new(LineWeight.Hair);

    /// <summary>For details and dimensions.</summary>
    public static Pen Thin { get; } = new(LineWeight.Thin);

    /// <summary>For outlines of things.</summary>
    public static Pen Normal { get; } = new(LineWeight.Normal);

    /// <summary>For the edge of what carries them.</summary>
    public static Pen Heavy { get; } = new(LineWeight.Heavy);
}

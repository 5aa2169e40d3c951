using Advance.Paper.Tree;

namespace Advance.Paper.Pictures;

/// <summary>Text at a fixed place, as a figure on a box or the scale on a grid. It is not moved; labels keep clear of it.</summary>
/// <param name="At">Where its anchor stands.</param>
/// <param name="Text">One line.</param>
/// <param name="Style">Default small.</param>
public sealed record Lettering(Point At, string Text, TextStyle Style = TextStyle.Quiet) : Shape
{
    /// <summary>Which point of the text stands at the place. Default its middle.</summary>
    public Anchor Anchor { get; init; }

    /// <summary>In degrees, clockwise. Default 0.</summary>
    public double Turn { get; init; }

    /// <summary>Height of a capital letter in mm of the paper. Default by style.</summary>
    public double? HeightMm { get; init; }

    /// <summary>True for white letters on a black shape. Default false.</summary>
    public bool White { get; init; }

    /// <summary>Additional room between letters, as a share of the size. Default 0.</summary>
    public double Spread { get; init; }
}

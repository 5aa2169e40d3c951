using Advance.Domain.Stocks;

namespace Advance.Handbook;

/// <summary>
/// Force coefficients where nobody gives one, rather too large: no slenderness is taken off. Source: <see cref="En1991.Forces"/>; that of bars is
/// common practice, on the area of the bars alone.
/// </summary>
public static class ForceCoefficients
{
    /// <summary>A box with sharp edges.</summary>
    public const double Box = 1.4;

    /// <summary>A sign or a sheet.</summary>
    public const double Sheet = 1.8;

    /// <summary>A free-standing wall at its ends, where nobody says which part of it a thing is. Source: <see cref="En1991.FreeWalls"/>.</summary>
    public const double Wall = 3.4;

    /// <summary>Of the width of a sign or a sheet, how far off its middle the wind may push: <c>e = 0.25 b</c>. Source: <see cref="En1991.Forces"/>.</summary>
    public const double OffMiddle = 0.25;

    /// <summary>Bars and tubes, on what the bars cover.</summary>
    public const double Lattice = 1.6;

    /// <summary>That of a shape.</summary>
    public static double Of(WindShape shape) => shape switch
    {
        WindShape.Sheet => Sheet,
        WindShape.Wall => Wall,
        WindShape.Lattice => Lattice,
        _ => Box,
    };
}

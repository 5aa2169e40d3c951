namespace Advance.Domain.Stocks;

/// <summary>How a cable is wound on its drum.</summary>
public enum CableDrum
{
    /// <summary><c>radial</c>: one turn above the other, closed.</summary>
    Radial,

    /// <summary><c>radial, ventilated</c>: the same, with air through it.</summary>
    RadialVentilated,

    /// <summary><c>1 layer</c> on a ventilated cylinder.</summary>
    OneLayer,

    /// <summary><c>2 layers</c> on it.</summary>
    TwoLayers,

    /// <summary><c>3 layers</c> on it.</summary>
    ThreeLayers,

    /// <summary><c>4 layers</c> on it.</summary>
    FourLayers,
}

namespace Advance.Paper.Pictures;

/// <summary>The unit of a scale bar.</summary>
public enum BarUnit
{
    /// <summary>Metres.</summary>
    Metres,

    /// <summary>Feet.</summary>
    Feet,
}

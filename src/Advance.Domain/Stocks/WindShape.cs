namespace Advance.Domain.Stocks;

/// <summary>What a thing is to the wind, where nobody gave it a force coefficient.</summary>
public enum WindShape
{
    /// <summary>A box with sharp edges.</summary>
    Box,

    /// <summary>A sign, a screen, a banner, a cloth.</summary>
    Sheet,

    /// <summary>A free-standing wall: a fence, a barrier with cloth, scenery from the ground up.</summary>
    Wall,

    /// <summary>Bars and tubes; its areas are those of the bars.</summary>
    Lattice,
}

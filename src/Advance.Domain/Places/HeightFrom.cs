using UnitsNet;

namespace Advance.Domain.Places;

/// <summary>A height, and from what it is measured: <c>6.5 m above floor</c>.</summary>
/// <param name="Height">Up from the level named; negative is below.</param>
/// <param name="Above"><see cref="Floor"/>, <see cref="Deck"/> or a named thing; null where it was not said and the key's own default holds.</param>
public readonly record struct HeightFrom(Length Height, string? Above = null)
{
    /// <summary>The floor that the stage stands on.</summary>
    public const string Floor = "floor";

    /// <summary>The top of the stage.</summary>
    public const string Deck = "deck";
}

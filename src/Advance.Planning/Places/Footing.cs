namespace Advance.Planning;

/// <summary>What stands under a thing.</summary>
public enum Footing
{
    /// <summary>Nobody knows: the stage's size is open.</summary>
    Unknown,

    /// <summary>The floor, outside the outline of the deck.</summary>
    Floor,

    /// <summary>The deck.</summary>
    Deck,
}

namespace Advance.Domain.Stocks;

/// <summary>What a kind is for the planner.</summary>
public enum Role
{
    /// <summary>Nothing in particular.</summary>
    Other,

    /// <summary><c>microphone</c></summary>
    Microphone,

    /// <summary><c>di</c></summary>
    DirectBox,

    /// <summary><c>stand</c></summary>
    Stand,

    /// <summary><c>stage-box</c></summary>
    StageBox,

    /// <summary><c>console</c></summary>
    Console,

    /// <summary><c>processor</c></summary>
    Processor,

    /// <summary><c>loudspeaker</c></summary>
    Loudspeaker,

    /// <summary><c>joint</c></summary>
    Joint,

    /// <summary><c>cable</c></summary>
    Cable,

    /// <summary><c>distribution</c></summary>
    Distribution,

    /// <summary><c>fixture</c></summary>
    Fixture,

    /// <summary><c>case</c></summary>
    Case,

    /// <summary><c>deck</c></summary>
    Deck,

    /// <summary><c>truck</c></summary>
    Truck,

    /// <summary><c>consumable</c></summary>
    Consumable,

    /// <summary><c>terminator</c>: ends a line of lighting control.</summary>
    Terminator,
}

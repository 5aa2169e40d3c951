namespace Advance.Planning;

/// <summary>What a piece is there for, and a task is done for.</summary>
public enum Job
{
    /// <summary>Nothing in particular.</summary>
    None,

    /// <summary>Getting it all in.</summary>
    Unload,

    /// <summary>Points, trusses and what lifts them.</summary>
    Rigging,

    /// <summary>The deck and what stands on it.</summary>
    Deck,

    /// <summary>Feeders and distributions.</summary>
    Mains,

    /// <summary>Testing before and after the power comes on.</summary>
    Test,

    /// <summary>The loudspeakers.</summary>
    Stacks,

    /// <summary>Microphones, DIs, stands, wedges and what they plug into.</summary>
    Inputs,

    /// <summary>Stands, fixtures and their desk.</summary>
    Lights,

    /// <summary>The desks for sound, and the way to them.</summary>
    Desks,

    /// <summary>Whether each box plays what it should.</summary>
    DriveCheck,

    /// <summary>Whether each line comes in where it should.</summary>
    LineCheck,
}

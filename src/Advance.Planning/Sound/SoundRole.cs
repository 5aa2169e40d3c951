namespace Advance.Planning;

/// <summary>What a device of the sound system is for, as the gig lists it.</summary>
public enum SoundRole
{
    /// <summary>A desk.</summary>
    Console,

    /// <summary>Carries lines to a desk and back.</summary>
    StageBox,

    /// <summary>Drives loudspeakers.</summary>
    Processor,

    /// <summary>Drives passive boxes.</summary>
    Amplifier,
}

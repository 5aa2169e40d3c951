namespace Advance.Planning;

/// <summary>Where one comes to who follows a signal back from a loudspeaker.</summary>
public enum PathEnd
{
    /// <summary>To a desk, as it should be.</summary>
    Desk,

    /// <summary>To an input that nothing feeds.</summary>
    Unfed,

    /// <summary>To a stage box that belongs to no desk.</summary>
    NoDesk,

    /// <summary>To an open question about what feeds something.</summary>
    Open,

    /// <summary>To a device that feeds something, but nobody says from which of its outputs.</summary>
    WhichOutput,

    /// <summary>To a name that no device bears.</summary>
    NoSuchDevice,

    /// <summary>Back to where one has been.</summary>
    Loop,
}

namespace Advance.Domain.Gigs;

/// <summary>What a day is for.</summary>
public enum DayKind
{
    /// <summary>The public comes.</summary>
    Show,

    /// <summary>Things are put up.</summary>
    Build,

    /// <summary>Rehearsal.</summary>
    Rehearsal,

    /// <summary>Things are taken down.</summary>
    Strike,
}

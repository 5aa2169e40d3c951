namespace Advance.Sheets.Drawings;

/// <summary>Which part of the way of the signal is drawn.</summary>
internal enum SignalPart
{
    /// <summary>All of it.</summary>
    Whole,

    /// <summary>What leads to a desk.</summary>
    ToDesk,

    /// <summary>What comes from a desk.</summary>
    FromDesk,

    /// <summary>Of what comes from a desk, what leads to loudspeakers that the audience hears.</summary>
    Loudspeakers,

    /// <summary>Of what comes from a desk, the rest: what those on stage hear.</summary>
    Heard,
}

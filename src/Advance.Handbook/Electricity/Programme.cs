namespace Advance.Handbook;

/// <summary>What an amplifier plays, for how hard it works on average.</summary>
public enum Programme
{
    /// <summary>Talking, with pauses.</summary>
    Speech,

    /// <summary>Loud music without audible clipping.</summary>
    Music,

    /// <summary>Dance music, and subs with any music.</summary>
    BassHeavy,
}

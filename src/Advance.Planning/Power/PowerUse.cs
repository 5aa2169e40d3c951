namespace Advance.Planning;

/// <summary>What a load is, for how hard it works in each show state.</summary>
public enum PowerUse
{
    /// <summary>A loudspeaker for the audience.</summary>
    Loudspeaker,

    /// <summary>What a mix is heard with: a wedge, in-ears.</summary>
    Monitor,

    /// <summary>What an act plays on.</summary>
    Backline,

    /// <summary>Desks, stage boxes, processors, receivers.</summary>
    Sound,

    /// <summary>Fixtures and what runs them.</summary>
    Lighting,

    /// <summary>Everything else.</summary>
    Other,
}

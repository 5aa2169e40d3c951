namespace Advance.Planning;

/// <summary>What a thing is to somebody who looks at a plan of the stage.</summary>
public enum Look
{
    /// <summary>A box that stands there.</summary>
    Box,

    /// <summary>An area on the floor: a carpet, a riser, a dance floor.</summary>
    Area,

    /// <summary>A loudspeaker stack.</summary>
    Stack,

    /// <summary>A stand that carries lights.</summary>
    LightStand,

    /// <summary>A truss overhead.</summary>
    Truss,

    /// <summary>Loudspeakers overhead.</summary>
    Hang,

    /// <summary>Steps.</summary>
    Steps,

    /// <summary>What must stay clear.</summary>
    KeepClear,
}

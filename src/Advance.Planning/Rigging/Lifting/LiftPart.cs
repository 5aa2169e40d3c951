namespace Advance.Planning;

/// <summary>What may reach its capacity when a truss is lifted.</summary>
public enum LiftPart
{
    /// <summary>A hoist, or what it hangs on.</summary>
    Hoist,

    /// <summary>The truss where it sags.</summary>
    Sagging,

    /// <summary>The truss where it hogs.</summary>
    Hogging,

    /// <summary>The truss in shear.</summary>
    Shear,

    /// <summary>The truss where moment and shear meet.</summary>
    Interaction,
}

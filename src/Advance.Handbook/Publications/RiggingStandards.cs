using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>Standards on slings, shackles and what else carries a load overhead.</summary>
public static class RiggingStandards
{
    /// <summary>Slings: hitches, and angles counted from the horizontal.</summary>
    public static readonly Publication AsmeB309 = new("ASME B30.9", "", "hitches and angles", Standing.Read);

    /// <summary>Textile round slings: colours, ratings, factors with angles counted from the vertical.</summary>
    public static readonly Publication En1492 = new("EN 1492-2", "", "ratings and factors", Standing.Read);

    /// <summary>Chain slings of grade 8.</summary>
    public static readonly Publication En8184 = new("EN 818-4", "", "ratings of grade 8", Standing.Read);

    /// <summary>Forged shackles as makers of North America print their ratings.</summary>
    public static readonly Publication Shackles = new("makers' tables of forged shackles", "", "", Standing.Read);

    /// <summary>Hardware: what a side load takes away.</summary>
    public static readonly Publication AsmeB3026 = new("ASME B30.26", "", "side loads", Standing.FromMemory);

    /// <summary>Shouldered eye bolts pulled at an angle.</summary>
    public static readonly Publication EyeBolts = new("makers' tables of eye bolts", "", "", Standing.Read);

    /// <summary>Mass of short-link chain.</summary>
    public static readonly Publication ChainMass = new("makers' tables of hoist chain", "", "", Standing.FromMemory);

    /// <summary>Truss: what its maker allows, moment and shear apart and together, and what wear leaves.</summary>
    public static readonly Publication Truss = new("EN 17115, ANSI E1.2", "", "truss", Standing.FromMemory);

    /// <summary>Power driven hoists: limiters, and what a point bears when a load catches.</summary>
    public static readonly Publication En14492 = new("EN 14492-2", "", "limiters", Standing.Read);

    /// <summary>Loudspeakers overhead: what their maker says of number, angle and fixing.</summary>
    public static readonly Publication Enclosures = new("ANSI E1.8, maker's manual", "", "loudspeaker enclosures for overhead suspension", Standing.FromMemory);

    /// <summary>Lifting over people: hoists, use cases, load measurement on more than two chains.</summary>
    public static readonly Publication EventRigging = new("EN 17206, igvw SQP2", "2020", "hoists and loads overhead", Standing.Read);
}

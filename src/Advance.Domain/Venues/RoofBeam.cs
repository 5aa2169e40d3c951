using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>A beam of the roof that points hang on.</summary>
/// <param name="Name">The venue's name for it.</param>
/// <param name="Span">Between its supports.</param>
/// <param name="Centre">What it may carry in its middle; null where not said.</param>
/// <param name="Uniform">What it may carry spread evenly, all together; null where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record RoofBeam(string Name, Given<Length> Span, Given<Mass>? Centre, Given<Mass>? Uniform, Mark At)
{
    /// <summary>The largest moment, where an engineer says so; null where it follows from the loads.</summary>
    public Given<Torque>? Moment { get; init; }

    /// <summary>The largest shear; null where nobody says.</summary>
    public Given<Force>? Shear { get; init; }

    /// <summary>Whether it rests on its two ends and nothing else; a beam over more supports is for its engineer.</summary>
    public bool IsSimple { get; init; } = true;

    /// <summary>How many points on it may be used at once, those of others among them; null where nobody says.</summary>
    public Given<int>? MostPoints { get; init; }

    /// <summary>How far apart points that are used must be at least; null where nobody says.</summary>
    public Given<Length>? Apart { get; init; }

    /// <summary>The bay of the roof that it is in; null where nobody says.</summary>
    public Given<string>? Bay { get; init; }

    /// <summary>Whether it is of timber, which bears less the longer a load hangs.</summary>
    public bool IsTimber { get; init; }

    /// <summary>What else hangs on it.</summary>
    public IReadOnlyList<BeamLoad> Others { get; init; } = [];
}

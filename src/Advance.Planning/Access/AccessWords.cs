using Advance.Domain.Facts;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Sizes of things and openings as findings say them.</summary>
internal static class AccessWords
{
    /// <summary><c>2.05 m x 0.98 m x 1.25 m high</c>.</summary>
    public static Words Size(Passage passage) => passage.Bulk is { } bulk
        ? $"{Length.FromMeters(bulk.Long)} x {Length.FromMeters(bulk.Short)} x {Length.FromMeters(bulk.Height)} high"
        : "size unknown";

    /// <summary><c>1.48 m wide, 2.05 m high</c>.</summary>
    public static Words Opening(AccessStep step) => (Known(step.Wide), Known(step.High)) switch
    {
        ({ } wide, { } high) => $"{wide} wide, {high} high",
        ({ } wide, null) => $"{wide} wide",
        (null, { } high) => $"{high} high",
        _ => "not measured",
    };

    /// <summary><c>2.15 m with clearance, 2.08 m go round</c>; the widths of the ways where no length does.</summary>
    public static Words Corner(Passage passage) => passage is { Longest.Value: { } longest, Grown: { } grown }
        ? $"{grown} with clearance, {longest} go round"
        : Opening(passage.Step);

    private static Length? Known(Given<Length>? given) => given is { IsKnown: true } there ? there.Value : null;
}

using Advance.Domain.Facts;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>What the venue keeps clear, as far as leads are concerned.</summary>
/// <param name="Clear">As written.</param>
/// <param name="Covers">Where it is; null where nobody knows.</param>
internal sealed record NoGo(KeepClear Clear, Area? Covers)
{
    // Wider than a usual door, for what has no width: leads rather stay too far away.
    private const double UsualWidth = 2;

    /// <summary>Finds what a venue keeps clear.</summary>
    public static IReadOnlyList<NoGo> Of(Venue venue, Ground ground) => [.. venue.KeepClear.Select(clear => new NoGo(clear, Cover(clear, ground)))];

    /// <summary>The open questions about where it is.</summary>
    public Doubts RestsOn => Doubts.Of(Clear.Place.Doubt).With(Doubts.Of(Clear.Wide?.Doubt));

    /// <summary>Whether a lead on the floor would lie across it.</summary>
    public bool IsCrossedBy(Spot from, Spot to) => Covers is { } area && area.IsCrossedBy(from, to);

    private static Area? Cover(KeepClear clear, Ground ground)
    {
        var width = clear.Wide is { } wide && wide.Is(out var known) ? known.Meters : UsualWidth;
        return ground.Find(clear.Place) is { } spot ? Area.Around(spot, width, width) : null;
    }
}

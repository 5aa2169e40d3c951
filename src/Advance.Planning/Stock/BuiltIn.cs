using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A rack or case that the gig names and places, and the devices that stand in it: they travel in it as well.</summary>
/// <param name="Case">The rack.</param>
/// <param name="Devices">What stands in it, in the order written; empty for a case that is only asked for.</param>
internal sealed record BuiltIn(Piece Case, IReadOnlyList<Piece> Devices)
{
    /// <summary>Every case that somebody asked for by name or as a loose extra, in the order of the pieces.</summary>
    public static IReadOnlyList<BuiltIn> Find(Gig gig, IReadOnlyList<Piece> pieces)
    {
        var homes = gig.Sound.Consoles.Concat(gig.Sound.StageBoxes).Concat(gig.Sound.Processors).Concat(gig.Power.Distributions)
            .Select(device => (device.At, Home: HomeOf(device)))
            .ToList();
        return
        [
            .. pieces.Where(piece => piece is { IsPulled: true, Kind.Role: Role.Case })
                .Select(piece => new BuiltIn(piece, [.. homes.Where(home => IsName(piece, home.Home)).SelectMany(home => PulledAt(home.At, pieces))])),
        ];
    }

    private static string? HomeOf(Device device) =>
        device.Place is { } place && place.Is(out var known) && known is Place.AtThing thing ? thing.Name : null;

    private static bool IsName(Piece piece, string? name) => string.Equals(piece.Name, name, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Piece> PulledAt(Mark at, IReadOnlyList<Piece> pieces) =>
        pieces.Where(piece => piece.IsPulled && piece.Why is Need.AskedFor asked && asked.At == at);
}

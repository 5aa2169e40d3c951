using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A truss, placed, before anybody knows what it carries.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Truss">As written.</param>
/// <param name="Kind">The kind of its sections; null where no stock has it.</param>
/// <param name="Spot">Its middle; null where nobody knows.</param>
/// <param name="Trim">Of its lower chord above the floor.</param>
/// <param name="Sections">What it is made of.</param>
/// <param name="Picks">Where it is held, in the order along it; those of unknown place last.</param>
public sealed record PlacedTruss(
    Address Address, HungTruss Truss, Kind? Kind, Spot? Spot, Figure<Length> Trim, IReadOnlyList<Piece> Sections, IReadOnlyList<PlacedPick> Picks)
{
    /// <summary>Its name on paper.</summary>
    public string Name => Truss.Name;

    /// <summary>The open questions about where it is, how long, and where it is held.</summary>
    public Doubts RestsOn => AlongRestsOn.With(Doubts.Of(Truss.Place.Doubt));

    /// <summary>The open questions about how long it is, and where along it it is held.</summary>
    public Doubts AlongRestsOn => Picks.Aggregate(Doubts.Of(Truss.Length.Doubt), (sum, pick) => sum.With(Doubts.Of(pick.Pick.Along.Doubt)));

    /// <summary>Where it begins along itself, 0; null where nobody knows how long it is: what is spread over it then is nobody knows where.</summary>
    public double? Start => End is null ? null : 0;

    /// <summary>Where it ends, m; null where nobody knows.</summary>
    public double? End => Truss.Length.Is(out var length) ? length.Meters : null;

    /// <summary>How far along it a spot is, from its first end, in metres; null where nobody knows.</summary>
    public double? Along(Spot? spot) => spot is { } at && Spot is { } middle && Truss.Length.Is(out var length)
        ? (length.Meters / 2) + (Truss.RunsUpstage ? at.Y - middle.Y : at.X - middle.X)
        : null;

    /// <summary>The spot so far along it; null where nobody knows.</summary>
    public Spot? At(double along) => Spot is { } middle && Truss.Length.Is(out var length)
        ? Truss.RunsUpstage ? middle.Plus(0, along - (length.Meters / 2)) : middle.Plus(along - (length.Meters / 2), 0)
        : null;
}

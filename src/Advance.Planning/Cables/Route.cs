using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The way that a lead takes.</summary>
/// <param name="Legs">From the source on; empty where both ends are at one place.</param>
/// <param name="Climbs">How often it goes up or down the edge of the deck.</param>
/// <param name="Ways">The named ways that it takes out into the hall, each once, in order.</param>
/// <param name="IsInHall">Whether an end or a part of it is further from the deck than leads are usually laid straight.</param>
/// <param name="Trespasses">Names of what the venue keeps clear and this lies across, other than on a named way.</param>
/// <param name="RestsOn">The open questions about the stage and the ways.</param>
public sealed record Route(
    IReadOnlyList<Leg> Legs, int Climbs, IReadOnlyList<CableWay> Ways, bool IsInHall, IReadOnlyList<string> Trespasses, Doubts RestsOn)
{
    /// <summary>How long it is on the ground, to the centimetre.</summary>
    public Length Path { get; } = Legs.Aggregate(Length.Zero, (sum, leg) => sum + leg.Length);

    /// <summary>Whether a part of it is a straight line where nobody named a way.</summary>
    public bool IsEstimated => Legs.Any(leg => leg.IsEstimated);

    /// <summary>What it lies along for a metre or more, in order: edges and named ways; <c>straight</c> where it lies along nothing.</summary>
    public IReadOnlyList<string> Via
    {
        get
        {
            var names = Legs.Where(leg => leg.Along.Length > 0)
                .GroupBy(leg => leg.Along, StringComparer.Ordinal)
                .Where(legs => legs.Sum(leg => leg.Length.Meters) >= 1)
                .Select(legs => legs.Key)
                .ToList();
            return names.Count > 0 ? names : ["straight"];
        }
    }

    /// <summary>The path with its working; the questions about where the ends are come on top.</summary>
    internal Figure<Length> Figure(Doubts ends) =>
        Sum.Of("path", "p = Σ pᵢ", Publication.Arithmetic)
            .PutAll("pᵢ", Legs.Select(leg => new Figure<Length>(leg.Length, RestsOn.With(ends), Reason.Derived.It)).DefaultIfEmpty(new(Length.Zero, RestsOn.With(ends), Reason.Derived.It)))
            .Gives(terms => terms.Values.Aggregate(Length.Zero, (sum, length) => sum + length));
}

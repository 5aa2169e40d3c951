using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How much there is to do of each thing, counted in what was planned.</summary>
/// <param name="pieces">Every piece.</param>
/// <param name="patch">Every line.</param>
/// <param name="times">How long it takes.</param>
internal sealed class Extents(IReadOnlyList<Piece> pieces, PatchPlan patch, TaskTimes times)
{
    /// <summary>Lines to set, patch and check.</summary>
    public Figure<int> Lines => new(
        patch.Lines.Count, patch.Lines.Aggregate(Doubts.None, (sum, line) => sum.With(Doubts.Of(line.Row.Device?.Doubt))), Reason.Derived.It);

    /// <summary>Circuits of all distributions.</summary>
    public Figure<int> Circuits => new(
        pieces.Where(piece => piece.Kind?.Role == Role.Distribution).Sum(piece => piece.Kind!.Outlets.Sum(row => row.Numbers.Count)),
        Of(Role.Distribution).RestsOn,
        Reason.Derived.It);

    /// <summary>Fixtures of some rows.</summary>
    public static Figure<int> OfFixtures(IEnumerable<FixtureRow> rows)
    {
        var all = rows.ToList();
        var doubts = all.Aggregate(Doubts.None, (sum, row) => sum.With(Doubts.Of(row.Item.Doubt)));
        return new Figure<int>(all.Sum(row => row.Numbers.Count), doubts, Reason.Derived.It);
    }

    /// <summary>Pieces of that role, whoever brings them.</summary>
    public Figure<int> Of(Role role)
    {
        var found = pieces.Where(piece => piece.Kind?.Role == role).ToList();
        return new Figure<int>(found.Count, found.Aggregate(Doubts.None, (sum, piece) => sum.With(Doubts.Of(piece.From.Doubt))), Reason.Derived.It);
    }

    /// <summary>To lay one length to each distribution, or as many feeders as were picked.</summary>
    public Figure<Duration> Feeders(Figure<int> distributions)
    {
        var light = pieces.Count(piece => IsFeeder(piece, above: 20, upTo: 63));
        var heavy = pieces.Count(piece => IsFeeder(piece, above: 63, upTo: double.MaxValue));
        var usual = distributions with { Value = Math.Max(distributions.Value ?? 0, light) };
        var parts = new List<Figure<Duration>> { Labour.For(usual, "feeder", times.Feeder) };
        if (heavy > 0)
        {
            parts.Add(Labour.For(Figure.Count(heavy), "heavy-feeder", times.HeavyFeeder));
        }

        return Labour.Together(parts);
    }

    private static bool IsFeeder(Piece piece, double above, double upTo) =>
        piece.Kind?.Cable is { Carries: "mains", Rating: { } given } && given.Is(out var rating) && rating.Amperes > above && rating.Amperes <= upTo;
}

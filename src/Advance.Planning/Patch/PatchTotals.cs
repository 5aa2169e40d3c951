using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Counts what is set up at once: by each act, and for all day beside. No act is struck for another, so all are set up together.</summary>
internal static class PatchTotals
{
    private const string AllDay = "";

    /// <summary>Lines, mixes, the returns they take, and each kind of microphone, DI and stand, whosever it is.</summary>
    public static IEnumerable<Stated> Of(IReadOnlyList<PatchLine> lines, IReadOnlyList<PatchReturn> returns)
    {
        var totals = Address.Of("patch") / "totals";
        if (lines.Count > 0)
        {
            yield return Total(totals / "lines", "lines", lines.Select(line => line.Act ?? AllDay), Doubts.None);
        }

        if (returns.Count > 0)
        {
            yield return Total(totals / "mixes", "mixes", returns.Where(mix => mix.Half == 0).Select(mix => mix.Act), Doubts.None);
            yield return Total(totals / "returns", "returns", returns.Select(mix => mix.Act), Doubts.None);
        }

        // What goes on a line where that is still open may be one more of any kind.
        var open = DoubtsOf(lines.Where(line => line.Row.Device is { IsKnown: false }));
        var kinds = lines
            .SelectMany(line => line.Kit.Where(IsCounted).Select(piece => (piece.Item, Line: line)))
            .GroupBy(found => found.Item, found => found.Line, StringComparer.Ordinal)
            .OrderBy(kind => kind.Key, StringComparer.Ordinal);
        foreach (var kind in kinds)
        {
            yield return Total(totals / kind.Key, kind.Key, kind.Select(line => line.Act ?? AllDay), open.With(DoubtsOf(kind)));
        }
    }

    // What no stock knows is counted as what it is called.
    private static bool IsCounted(Piece piece) => piece.Kind is null or { Role: Role.Microphone or Role.DirectBox or Role.Stand };

    private static Doubts DoubtsOf(IEnumerable<PatchLine> lines) =>
        lines.Aggregate(Doubts.None, (sum, line) => sum.With(Doubts.Of(line.Row.Device?.Doubt)));

    private static Stated Total(Address address, string what, IEnumerable<string> acts, Doubts restsOn)
    {
        var sum = Sum.Of($"{what} set up at once", "n = Σ nᵢ", Publication.Arithmetic)
            .PutAll("nᵢ", acts.GroupBy(act => act, StringComparer.Ordinal).OrderBy(act => act.Key, StringComparer.Ordinal).Select(act => Figure.Count(act.Count()) with { RestsOn = restsOn }))
            .Gives(terms => terms.Values.Sum());
        return Stated.Of(address, $"{what}, set up at once", sum);
    }
}

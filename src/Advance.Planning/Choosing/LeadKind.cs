using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A kind of lead that may be picked.</summary>
/// <param name="Kind">As in the stock.</param>
/// <param name="A">One end.</param>
/// <param name="B">The other.</param>
/// <param name="Millimetres">Its length, rounded down: a lead is never longer than it is.</param>
internal sealed record LeadKind(Kind Kind, LeadPlug A, LeadPlug B, long Millimetres)
{
    /// <summary>The leads of a stock that carry something and whose length is known, in the order of their ids.</summary>
    public static IReadOnlyList<LeadKind> Of(Stock stock, string carries) =>
    [
        .. stock.Kinds.Values
            .Where(kind => kind.Cable?.Carries == carries && kind.Cable.Length.IsKnown)
            .OrderBy(kind => kind.Id, StringComparer.Ordinal)
            .Select(kind => new LeadKind(kind, LeadPlug.Read(kind.Cable!.From), LeadPlug.Read(kind.Cable.To), (long)Math.Floor((kind.Cable.Length.Value.Meters * 1000) + 1e-3))),
    ];

    /// <summary>Both ways to lay it: which end is at the source, which at the load.</summary>
    public IEnumerable<(LeadPlug Source, LeadPlug Load)> Ways => Both(A, B);

    /// <summary>Both ways to lay a lead with these ends; one, where they are alike.</summary>
    public static IEnumerable<(LeadPlug Source, LeadPlug Load)> Both(LeadPlug a, LeadPlug b) => a == b ? [(a, b)] : [(a, b), (b, a)];
}

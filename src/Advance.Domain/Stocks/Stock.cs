namespace Advance.Domain.Stocks;

/// <summary>What the shop owns.</summary>
/// <param name="Kinds">By id, in the order of the files and within them.</param>
public sealed record Stock(IReadOnlyDictionary<string, Kind> Kinds)
{
    /// <summary>A gig without a stock still builds.</summary>
    public static readonly Stock None = new(new Dictionary<string, Kind>(StringComparer.Ordinal));

    /// <summary>The kind of that id; null where the stock has none.</summary>
    public Kind? Find(string id) => Kinds.GetValueOrDefault(id);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The inside of a vehicle.</summary>
/// <param name="Payload">What it may carry.</param>
/// <param name="Inside">What it holds; null where nobody says.</param>
/// <param name="Why">Where that was written.</param>
/// <param name="RestsOn">The open questions about it.</param>
internal sealed record LoadSpace(Figure<Mass> Payload, Bulk? Inside, Reason Why, Doubts RestsOn)
{
    /// <summary>How wide its floor is.</summary>
    public Figure<Length> Width => Side(Inside?.Width);

    /// <summary>How long its floor is.</summary>
    public Figure<Length> Depth => Side(Inside?.Depth);

    /// <summary>Its floor, in m².</summary>
    public Figure<double> Floor => new(Inside?.Floor, RestsOn, Why);

    /// <summary>What it holds, in m³.</summary>
    public Figure<double> Volume => new(Inside?.Volume, RestsOn, Why);

    /// <summary>The inside of a vehicle of that kind; all unknown where its kind is.</summary>
    public static LoadSpace Of(Given<string> item, Stock stock)
    {
        var kind = item.Is(out var id) ? stock.Find(id) : null;
        var doubts = Doubts.Of(item.Doubt);
        var payload = kind?.Payload is { } given ? Figure.From(given) : new Figure<Mass>(null, Doubts.None, Reason.Derived.It);
        return new LoadSpace(
            payload with { RestsOn = payload.RestsOn.With(doubts) },
            Bulk.Of(kind?.Size),
            new Reason.Fixed(kind?.Size?.At ?? item.At),
            doubts.With(Doubts.Of(kind?.Size?.Doubt)));
    }

    private Figure<Length> Side(double? metres) => new(metres is { } known ? Length.FromMeters(known) : null, RestsOn, Why);
}

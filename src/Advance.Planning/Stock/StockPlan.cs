namespace Advance.Planning;

/// <summary>What the shop pulls, what it travels in, and what comes from others.</summary>
/// <param name="Lines">By department, shelf and item, cases among them.</param>
/// <param name="FromOthers">Pieces that the shop does not pull, as planned.</param>
/// <param name="Units">Cases as packed, in the order of what is in them, then what travels loose; a vehicle is none.</param>
public sealed record StockPlan(IReadOnlyList<StockLine> Lines, IReadOnlyList<Piece> FromOthers, IReadOnlyList<TravellingUnit> Units)
{
    /// <summary>What is pulled, spare, ready and short of each kind, and what each case weighs.</summary>
    public IReadOnlyList<Stated> Figures { get; } =
    [
        .. Lines.SelectMany(line => line.Figures),
        .. Units.Select(unit => Stated.Of(unit.Address / "gross", $"{unit.Name}, gross weight", unit.Gross)),
    ];
}

using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>So many of one kind in a case.</summary>
/// <param name="Item">Id of the kind.</param>
/// <param name="Kind">Null where no stock has it.</param>
/// <param name="Count">At least 1.</param>
public sealed record Packed(string Item, Kind? Kind, int Count);

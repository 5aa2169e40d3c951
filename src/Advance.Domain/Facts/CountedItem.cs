namespace Advance.Domain.Facts;

/// <summary>So many of an item: <c>6 x wedge-12</c>, <c>top-10 upside-down</c>, <c>drum kit</c>.</summary>
/// <param name="Count">At least 1; 1 where no number was written.</param>
/// <param name="Item">The item's id in the stock, or words for something in no stock.</param>
/// <param name="Stance">Which way up and which way round.</param>
public sealed record CountedItem(int Count, string Item, Stance Stance = Stance.Usual);

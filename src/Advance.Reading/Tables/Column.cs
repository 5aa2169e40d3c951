namespace Advance.Reading.Tables;

/// <summary>What a heading was found to mean.</summary>
/// <param name="Key">The key; null where the heading means nothing.</param>
/// <param name="Unit">The unit of bare numbers in the column; null where the cells have their own.</param>
/// <param name="Guess">The key that was probably meant.</param>
internal readonly record struct Column(string? Key, string? Unit, string? Guess);

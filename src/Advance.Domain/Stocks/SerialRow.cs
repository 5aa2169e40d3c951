using Advance.Domain.Facts;

namespace Advance.Domain.Stocks;

/// <summary>One piece by its number.</summary>
/// <param name="Serial">As on its plate.</param>
/// <param name="TestDue">When its next test is due; null where it needs none.</param>
/// <param name="At">Where it was written.</param>
public sealed record SerialRow(string Serial, Given<WrittenDate>? TestDue, Mark At);

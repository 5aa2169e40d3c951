using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Says which circuits fixed by hand to free.</summary>
internal static class FreeCircuits
{
    /// <summary>As a cure.</summary>
    public static string Say(IReadOnlyList<CircuitRow> rows) =>
        $"Leave free what is fixed on {string.Join(", ", rows.Select(row => $"{row.Distribution}{(row.Number is { IsKnown: true } number ? $" {number.Value}" : "")} ({row.Feeds})"))}: then everything fits.";
}

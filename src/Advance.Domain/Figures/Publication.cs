namespace Advance.Domain.Figures;

/// <summary>Where a formula or a table stands, so that a licensed person can look it up.</summary>
/// <param name="Title">Name of the standard, handbook or law.</param>
/// <param name="Edition">Edition or year; empty where there is none.</param>
/// <param name="Clause">Clause, table or page; empty for the whole.</param>
/// <param name="Standing">Read there, remembered, or common practice without a source.</param>
public sealed record Publication(string Title, string Edition, string Clause, Standing Standing)
{
    /// <summary>What the trade usually does, without a source.</summary>
    public static readonly Publication CommonPractice = new("common practice", "", "", Standing.CommonPractice);

    /// <summary>Plain arithmetic: it needs no source.</summary>
    public static readonly Publication Arithmetic = new("arithmetic", "", "", Standing.Read);

    /// <summary>As printed beside a working.</summary>
    public override string ToString()
    {
        var place = string.Join(", ", new[] { Title, Edition, Clause }.Where(part => part.Length > 0));
        return Standing == Standing.FromMemory ? $"{place} (from memory)" : place;
    }
}

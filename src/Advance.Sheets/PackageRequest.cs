namespace Advance.Sheets;

/// <summary>What somebody wants of a package.</summary>
/// <param name="Formats">Any of <c>pdf</c>, <c>xlsx</c>, <c>html</c>, <c>json</c>.</param>
/// <param name="Only">Ids of sheets, or beginnings of them up to a hyphen; empty for all.</param>
/// <param name="Reader">Whose copy it is; null for the whole package.</param>
public sealed record PackageRequest(IReadOnlyCollection<string> Formats, IReadOnlyCollection<string> Only, string? Reader)
{
    /// <summary>Everything for everybody.</summary>
    public static readonly PackageRequest Everything = new(["pdf", "xlsx", "html", "json"], [], null);

    /// <summary>Whether other people's private numbers may stand in this copy.</summary>
    public bool ShowsPrivate => Reader is null or "all" or "crew";
}

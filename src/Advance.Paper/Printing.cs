namespace Advance.Paper;

/// <summary>What came out of the printer.</summary>
/// <param name="Faults">What could not be printed as it stands, in the order of the document; empty when all could.</param>
/// <param name="PageCount">Pages of the PDF; 0 when neither PDF nor HTML was asked for.</param>
public sealed record Printing(IReadOnlyList<Fault> Faults, int PageCount)
{
    /// <summary>The PDF; null when it was not asked for.</summary>
    public byte[]? Pdf { get; init; }

    /// <summary>The HTML page, which needs no other file; null when it was not asked for.</summary>
    public string? Html { get; init; }

    /// <summary>The workbook (XLSX); null when it was not asked for.</summary>
    public byte[]? Workbook { get; init; }
}

namespace Advance.Domain.Companies;

/// <summary>Paper that a company prints on.</summary>
public enum PaperSize
{
    /// <summary>210 x 297 mm.</summary>
    A4,

    /// <summary>8.5 x 11 in.</summary>
    Letter,
}

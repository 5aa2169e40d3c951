using Advance.Domain;
using Advance.Domain.Findings;
using Advance.Domain.Issues;
using Advance.Reading.Companies;
using Advance.Reading.Files;

namespace Advance.Reading;

/// <summary>What came of reading a gig and all files that it names.</summary>
/// <param name="Brief">Null where any file has an error.</param>
/// <param name="Findings">Everything wrong in all files, in the order of files, lines and columns, each once.</param>
/// <param name="Sources">The files that were read, for quoting lines.</param>
/// <param name="Earlier">The issue before this one, kept beside the gig; null before the first.</param>
public sealed record BriefReading(Brief? Brief, IReadOnlyList<Finding> Findings, Sources Sources, LastIssue? Earlier = null)
{
    /// <summary>What the company puts in the place of what is shipped.</summary>
    public CompanyFiles CompanyFiles { get; init; } = CompanyFiles.None;
}

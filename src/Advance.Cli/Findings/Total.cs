using Advance.Domain.Findings;

namespace Advance.Cli.Findings;

/// <summary>The last line under a list of findings.</summary>
internal static class Total
{
    /// <summary><c>1 stop, 2 concerns, 1 accepted</c>, or <c>Nothing found.</c></summary>
    public static string Of(IReadOnlyList<Finding> findings)
    {
        var open = findings.Where(finding => finding.Accepted is null).ToList();
        string[] parts =
        [
            Count(open.Count(finding => finding.Severity == Severity.Error), "error", "errors"),
            Count(open.Count(finding => finding.Severity == Severity.Stop), "stop", "stops"),
            Count(open.Count(finding => finding.Severity == Severity.Concern), "concern", "concerns"),
            Count(open.Count(finding => finding.Severity == Severity.Note), "note", "notes"),
            Count(findings.Count - open.Count, "accepted", "accepted"),
        ];
        var said = string.Join(", ", parts.Where(part => part.Length > 0));
        return said.Length > 0 ? said : "Nothing found.";
    }

    private static string Count(int count, string one, string many) => count == 0 ? "" : $"{count} {(count == 1 ? one : many)}";
}

using Advance.Domain.Findings;
using Advance.Domain.Issues;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;

namespace Advance.Cli.Commands;

/// <summary>A gig as far as it came: read, and planned where it could be read.</summary>
/// <param name="Plan">Null where the description is broken.</param>
/// <param name="Findings">Of reading and of the rules.</param>
/// <param name="Reading">What it was planned from.</param>
internal sealed record Planned(Plan? Plan, IReadOnlyList<Finding> Findings, BriefReading Reading)
{
    /// <summary>For quoting lines.</summary>
    public Sources Sources => Reading.Sources;

    /// <summary>The issue before this one; null before the first.</summary>
    public LastIssue? Earlier => Reading.Earlier;

    /// <summary>What the company puts in the place of what is shipped.</summary>
    public CompanyFolder Company => new(Reading.CompanyFiles.Templates, Reading.CompanyFiles.Fonts);

    /// <summary>What <c>check</c> tells the shell.</summary>
    public int ExitCode => Plan is null ? Cli.ExitCode.BrokenInput : Findings.Any(finding => finding.Stops) ? Cli.ExitCode.Stopped : Cli.ExitCode.Done;

    /// <summary>Reads and plans a gig.</summary>
    public static Planned From(string gig)
    {
        var (root, path) = GigArgument.Locate(gig);
        var read = BriefReader.Read(new FolderDoor(root), path);
        var plan = read.Brief is { } brief ? Planner.Plan(brief, read.Earlier?.Chosen) : null;
        return new Planned(plan, [.. read.Findings, .. plan?.Findings ?? []], read);
    }
}

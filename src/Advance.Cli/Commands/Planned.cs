using Advance.Domain.Findings;
using Advance.Domain.Issues;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Cli.Commands;

/// <summary>A gig as far as it came: read, and planned where it could be read.</summary>
/// <param name="Plan">Null where the description is broken.</param>
/// <param name="Findings">Of reading and of the rules.</param>
/// <param name="Sources">For quoting lines.</param>
/// <param name="Earlier">The issue before this one; null before the first.</param>
internal sealed record Planned(Plan? Plan, IReadOnlyList<Finding> Findings, Sources Sources, LastIssue? Earlier)
{
    /// <summary>Reads and plans a gig.</summary>
    public static Planned From(string gig)
    {
        var (root, path) = GigArgument.Locate(gig);
        var read = BriefReader.Read(new FolderDoor(root), path);
        if (read.Brief is not { } brief)
        {
            return new Planned(null, read.Findings, read.Sources, read.Earlier);
        }

        var plan = Planner.Plan(brief, read.Earlier?.Chosen);
        return new Planned(plan, [.. read.Findings, .. plan.Findings], read.Sources, read.Earlier);
    }

    /// <summary>What <c>check</c> tells the shell.</summary>
    public int ExitCode => Plan is null ? Cli.ExitCode.BrokenInput : Findings.Any(finding => finding.Stops) ? Cli.ExitCode.Stopped : Cli.ExitCode.Done;
}

using Advance.Domain.Findings;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Cli.Commands;

/// <summary>A gig as far as it came: read, and planned where it could be read.</summary>
/// <param name="Plan">Null where the description is broken.</param>
/// <param name="Findings">Of reading and of the rules.</param>
/// <param name="Sources">For quoting lines.</param>
internal sealed record Planned(Plan? Plan, IReadOnlyList<Finding> Findings, Sources Sources)
{
    /// <summary>Reads and plans a gig.</summary>
    public static Planned From(string gig)
    {
        var (root, path) = GigArgument.Locate(gig);
        var read = BriefReader.Read(new FolderDoor(root), path);
        if (read.Brief is not { } brief)
        {
            return new Planned(null, read.Findings, read.Sources);
        }

        var plan = Planner.Plan(brief);
        return new Planned(plan, [.. read.Findings, .. plan.Findings], read.Sources);
    }

    /// <summary>What <c>check</c> tells the shell.</summary>
    public int ExitCode => Plan is null ? Cli.ExitCode.BrokenInput : Findings.Any(finding => finding.Stops) ? Cli.ExitCode.Stopped : Cli.ExitCode.Done;
}

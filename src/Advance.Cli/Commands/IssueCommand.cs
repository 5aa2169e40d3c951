using System.CommandLine;
using Advance.Cli.Findings;
using Advance.Cli.Output;
using Advance.Domain.Issues;
using Advance.Domain.Wording;
using Advance.Planning;
using Advance.Reading.Issues;
using Advance.Sheets;

namespace Advance.Cli.Commands;

/// <summary><c>advance issue GIG</c></summary>
internal static class IssueCommand
{
    private const string Folder = "package";

    public static Command Make(Terminal terminal)
    {
        var gig = GigArgument.Make();
        var command = new Command(
            "issue", "Builds the whole package and keeps the plan beside the gig, for the next issue to stay near to. Exit code 1 where it may not be issued.") { gig };
        command.SetAction(parsed => Issue(terminal, parsed.GetRequiredValue(gig)));
        return command;
    }

    private static int Issue(Terminal terminal, string gig)
    {
        PackageBuilder.WakeUp(PackageRequest.Everything);
        var planned = Planned.From(gig);
        if (planned.Plan is not { } plan)
        {
            terminal.Say(FindingPrinter.Print(planned, "full").TrimEnd('\n'));
            terminal.Complain(["Nothing was issued."], "Mend what cannot be read.");
            return planned.ExitCode;
        }

        if (Refusal(plan, planned) is var (why, cure))
        {
            terminal.Complain([$"Nothing was issued: {why}"], cure);
            return ExitCode.Stopped;
        }

        return Write(terminal, gig, plan, planned);
    }

    private static (string Why, string Cure)? Refusal(Plan plan, Planned planned)
    {
        var stops = planned.Findings.Where(finding => finding.Stops).ToList();
        if (stops.Count > 0)
        {
            var names = string.Join("", stops.Select(stop => $"\n  {stop.Rule}: {Speech.Of(plan.Brief.Company.Units).Say(stop.Says)}"));
            return ($"{stops.Count} {(stops.Count == 1 ? "stop stands" : "stops stand")}.{names}", "Cure each of them, or have it accepted by name; advance check prints the rows.");
        }

        var gig = plan.Brief.Gig;
        if (gig.Revision is not { } revision || gig.Issued is not { IsKnown: true })
        {
            return ("the gig has no revision, or no date of issue.", "Write revision: and issued: in the gig.");
        }

        return planned.Earlier is { } earlier && earlier.Revision == revision && !earlier.SaysTheSameAs(ToKeep(plan, revision))
            ? ($"revision {revision} is out already, and the plan has changed since.", "Give it the next letter, and say what is new.")
            : null;
    }

    private static int Write(Terminal terminal, string gig, Plan plan, Planned planned)
    {
        var package = PackageBuilder.Build(plan, PackageRequest.Everything, planned.Company);
        if (package.Files.Count == 0)
        {
            terminal.Complain(package.Faults, "Nothing was issued.");
            return ExitCode.BrokenInput;
        }

        var folder = GigArgument.FolderOf(gig);
        var revision = plan.Brief.Gig.Revision!;
        if (FolderWriter.Write(folder, [.. package.Files.Select(file => ($"{Folder}/{file.Name}", file.Bytes)), (IssueFile.Name, IssueFile.Write(ToKeep(plan, revision)))]) is { } refusal)
        {
            terminal.Complain([$"Nothing was written to {folder}: {refusal}"], "Make room, or ask who may write there.");
            return ExitCode.BrokenInput;
        }

        if (package.Faults.Count > 0)
        {
            terminal.Complain(package.Faults, "The package was written all the same.");
        }

        terminal.Say($"Revision {revision} is issued: {package.Sheets.Count} sheets in {Path.Combine(folder, Folder)}, the plan kept in {IssueFile.Name}. {Total.Of(planned.Findings)}");
        return ExitCode.Done;
    }

    private static LastIssue ToKeep(Plan plan, string revision)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        return new LastIssue(revision, plan.Chosen, plan.Figures.ToDictionary(stated => stated.Address, stated => stated.Value is { } value ? speech.Say(value) : "unknown"));
    }
}

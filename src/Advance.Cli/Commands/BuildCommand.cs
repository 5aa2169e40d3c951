using System.CommandLine;
using Advance.Cli.Findings;
using Advance.Cli.Output;
using Advance.Planning;
using Advance.Sheets;

namespace Advance.Cli.Commands;

/// <summary><c>advance build GIG</c></summary>
internal static class BuildCommand
{
    private static readonly string[] Formats = ["pdf", "xlsx", "html", "json"];

    public static Command Make(Terminal terminal)
    {
        var gig = GigArgument.Make();
        var output = new Option<string?>("--out") { Description = "Folder to write to. Default: package, in the gig's folder." };
        var formats = new Option<string[]>("--format")
        {
            Description = "Which of pdf, xlsx, html and json to write. Default: all.",
            AllowMultipleArgumentsPerToken = true,
            DefaultValueFactory = _ => Formats,
        };
        formats.AcceptOnlyFromAmong(Formats);
        var only = new Option<string[]>("--only") { Description = "Only these sheets, by id.", AllowMultipleArgumentsPerToken = true };
        var reader = new Option<string?>("--for") { Description = "Only the sheets for one reader: venue, crew, shop, sound, electrician, rigger, act or all." };
        var strict = new Option<bool>("--strict") { Description = "Write nothing where something stops the package from being issued." };
        var command = new Command("build", "Builds the package. Exit code 0 when it was written, 1 where --strict refused, 2 where the gig cannot be read.")
        {
            gig,
            output,
            formats,
            only,
            reader,
            strict,
        };
        command.SetAction(parsed =>
        {
            var request = new PackageRequest(parsed.GetRequiredValue(formats), parsed.GetValue(only) ?? [], parsed.GetValue(reader));
            return Build(terminal, parsed.GetRequiredValue(gig), parsed.GetValue(output), request, parsed.GetValue(strict));
        });
        return command;
    }

    private static int Build(Terminal terminal, string gig, string? output, PackageRequest request, bool strict)
    {
        PackageBuilder.WakeUp(request);
        var planned = Planned.From(gig);
        if (planned.Plan is not { } plan || (strict && plan.IsStopped))
        {
            terminal.Say(FindingPrinter.Print(planned, "full").TrimEnd('\n'));
            terminal.Complain(["Nothing was written."], planned.Plan is null ? "Mend what cannot be read." : "Cure or accept what stops it, or build without --strict.");
            return planned.ExitCode;
        }

        return Write(terminal, plan, planned, output ?? Path.Combine(GigArgument.FolderOf(gig), "package"), request);
    }

    private static int Write(Terminal terminal, Plan plan, Planned planned, string folder, PackageRequest request)
    {
        var package = PackageBuilder.Build(plan, request, planned.Company);
        if (package.Files.Count == 0)
        {
            terminal.Complain(package.Faults, "Nothing was written.");
            return ExitCode.BrokenInput;
        }

        if (FolderWriter.Write(folder, package.Files) is { } refusal)
        {
            terminal.Complain([$"Nothing was written to {folder}: {refusal}"], "Name another folder with --out.");
            return ExitCode.BrokenInput;
        }

        if (package.Faults.Count > 0)
        {
            terminal.Complain(package.Faults, "The package was written all the same.");
        }

        terminal.Say($"{folder}: {string.Join(", ", package.Files.Select(file => file.Name))}");
        terminal.Say($"{package.Sheets.Count} sheets. {Total.Of(planned.Findings)}");
        return ExitCode.Done;
    }
}

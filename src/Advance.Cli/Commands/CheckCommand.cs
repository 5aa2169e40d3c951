using System.CommandLine;
using Advance.Cli.Findings;
using Advance.Cli.Output;

namespace Advance.Cli.Commands;

/// <summary><c>advance check GIG</c></summary>
internal static class CheckCommand
{
    public static Command Make(Terminal terminal)
    {
        var gig = GigArgument.Make();
        var form = new Option<string>("--as")
        {
            Description = "How findings are printed: full (with the line and a caret), short (a line each) or json.",
            DefaultValueFactory = _ => "full",
        };
        form.AcceptOnlyFromAmong("full", "short", "json");
        var command = new Command("check", "Reads and plans a gig and prints what is wrong with it. Exit code 0, 1 where something stops it, 2 where it cannot be read.")
        {
            gig,
            form,
        };
        command.SetAction(parsed =>
        {
            var planned = Planned.From(parsed.GetRequiredValue(gig));
            terminal.Say(FindingPrinter.Print(planned, parsed.GetRequiredValue(form)).TrimEnd('\n'));
            return planned.ExitCode;
        });
        return command;
    }
}

using System.CommandLine;
using Advance.Cli.Output;
using Advance.Reading;

namespace Advance.Cli.Commands;

/// <summary><c>advance schema</c></summary>
internal static class SchemaCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = new Option<string>("--of")
        {
            Description = "Which file it is for: gig, venue, company or stock.",
            DefaultValueFactory = _ => "gig",
        };
        file.AcceptOnlyFromAmong("gig", "venue", "company", "stock");
        var reference = new Option<bool>("--reference") { Description = "All keys with what they mean, as Markdown, in place of the JSON Schema." };
        var command = new Command("schema", "Prints the JSON Schema of a file, for an editor that checks while you type.") { file, reference };
        command.SetAction(parsed =>
        {
            var name = parsed.GetRequiredValue(file);
            terminal.Say((parsed.GetValue(reference) ? KeyReference.Write(name) : FileSchema.Write(name)).TrimEnd('\n'));
            return ExitCode.Done;
        });
        return command;
    }
}

using System.CommandLine;
using Advance.Cli.Commands;
using Advance.Cli.Output;

namespace Advance.Cli;

/// <summary>The program: finds the command, runs it, and turns what came of it into an exit code.</summary>
internal static class Program
{
    // More than a run takes on the largest gig, and no more of a small machine than others can spare.
    private const long Memory = 640L << 20;
    private const int ShareOfMachine = 4;

    private static int Main(string[] arguments)
    {
        PutOffCollecting();
        return Run(arguments, Console.Out, Console.Error);
    }

    /// <summary>Runs one command line.</summary>
    /// <param name="arguments">As the shell parted them.</param>
    /// <param name="results">What was asked for.</param>
    /// <param name="complaints">What is wrong.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    internal static int Run(IReadOnlyList<string> arguments, TextWriter results, TextWriter complaints)
    {
        var terminal = new Terminal(results, complaints);
        try
        {
            var parsed = Root(terminal).Parse(arguments);
            if (parsed.Errors.Count > 0)
            {
                terminal.Complain(parsed.Errors.Select(error => error.Message), "advance --help tells what can be said.");
                return ExitCode.BrokenInput;
            }

            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = results, Error = complaints });
        }
        catch (Exception bug) when (bug is not OutOfMemoryException)
        {
            terminal.Complain([$"This is a bug in advance, not in your files: {bug.Message}"], bug.ToString());
            return ExitCode.Bug;
        }
    }

    // A run is over so soon that nothing is gained by looking for what it no longer needs; one that takes more memory is collected as ever.
    private static void PutOffCollecting()
    {
        if (GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / ShareOfMachine >= Memory)
        {
            GC.TryStartNoGCRegion(Memory);
        }
    }

    private static RootCommand Root(Terminal terminal) => new("Turns one description of a gig into the paperwork that everybody at load-in works from.")
    {
        CheckCommand.Make(terminal),
        BuildCommand.Make(terminal),
        IssueCommand.Make(terminal),
        ExplainCommand.Make(terminal),
        RulesCommand.Make(terminal),
        SchemaCommand.Make(terminal),
        NewCommand.Make(terminal),
    };
}

namespace Advance.Tests.Cli;

/// <summary>One run of the program inside the test.</summary>
internal sealed record CommandLine(int Code, string Output, string Complaints)
{
    public static CommandLine Run(params string[] arguments)
    {
        var (output, complaints) = (new StringWriter(), new StringWriter());
        var code = Advance.Cli.Program.Run(arguments, output, complaints);
        return new CommandLine(code, output.ToString(), complaints.ToString());
    }
}

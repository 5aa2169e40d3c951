using System.CommandLine;
using System.Reflection;
using Advance.Cli.Output;

namespace Advance.Cli.Commands;

/// <summary><c>advance new FOLDER</c></summary>
internal static class NewCommand
{
    private const string Prefix = "starter/";

    public static Command Make(Terminal terminal)
    {
        var folder = new Argument<string>("FOLDER") { Description = "Where to; it must not exist yet." };
        var command = new Command("new", "Writes a small gig to start from, with its venue, company and stock.") { folder };
        command.SetAction(parsed => Write(terminal, parsed.GetRequiredValue(folder)));
        return command;
    }

    private static int Write(Terminal terminal, string folder)
    {
        if (Directory.Exists(folder) || File.Exists(folder))
        {
            terminal.Complain([$"{folder} is there already."], "Name a folder that does not exist yet.");
            return ExitCode.BrokenInput;
        }

        if (FolderWriter.Write(folder, [.. Starter()]) is { } refusal)
        {
            terminal.Complain([$"Nothing was written to {folder}: {refusal}"], "Name another folder.");
            return ExitCode.BrokenInput;
        }

        terminal.Say($"Written to {folder}. Next: advance build {Path.Combine(folder, "gig")}");
        return ExitCode.Done;
    }

    private static IEnumerable<(string Name, ReadOnlyMemory<byte> Bytes)> Starter()
    {
        var assembly = Assembly.GetExecutingAssembly();
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            yield return (name[Prefix.Length..], bytes.ToArray());
        }
    }
}

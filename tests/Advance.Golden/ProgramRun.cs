using System.Diagnostics;
using System.Security.Cryptography;

namespace Advance.Golden;

/// <summary>The program, as a process of its own.</summary>
/// <param name="Program">What is started.</param>
/// <param name="First">Arguments before all others.</param>
internal sealed record ProgramRun(string Program, params string[] First)
{
    /// <summary>As it was built with the tests.</summary>
    public static ProgramRun Built { get; } = new("dotnet", Path.Combine(AppContext.BaseDirectory, "advance.dll"));

    /// <summary>As it is given to people; null where nobody published it. The gate does, and names it.</summary>
    public static ProgramRun? Published { get; } = Environment.GetEnvironmentVariable("ADVANCE_PROGRAM") is { } program ? new(program) : null;

    public string Folder { get; init; } = "/";

    public IReadOnlyList<(string Name, string Value)> Surroundings { get; init; } = [];

    /// <summary>Runs one command line.</summary>
    /// <returns>What it said, results before complaints.</returns>
    public (int ExitCode, string Said) Say(params string[] arguments)
    {
        var start = new ProcessStartInfo(Program, [.. First, .. arguments]) { WorkingDirectory = Folder, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in Surroundings)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var complaints = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd() + complaints.GetAwaiter().GetResult();
        process.WaitForExit();
        return (process.ExitCode, said);
    }

    /// <summary>The files of a folder, by name.</summary>
    public static SortedDictionary<string, string> Hashes(string folder) =>
        new(Directory.GetFiles(folder).ToDictionary(file => Path.GetFileName(file), file => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))), StringComparer.Ordinal);
}

using System.Diagnostics;

namespace Advance.Workbooks;

/// <summary>Workbooks printed by a program of its own, once for all tests here.</summary>
public sealed class PrintedBooks : IDisposable
{
    public PrintedBooks()
    {
        Folder = Path.Combine(AppContext.BaseDirectory, "printed");
        // bin/Debug/net10.0 of this project, and the same of the one that prints.
        var here = new DirectoryInfo(AppContext.BaseDirectory);
        var printer = Path.Combine(here.Parent!.Parent!.Parent!.Parent!.FullName, "Advance.Benchmarks", "bin", here.Parent.Name, here.Name, "Advance.Benchmarks.dll");
        using var process = Process.Start(new ProcessStartInfo("dotnet", [printer, "print", Folder]) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    public string Folder { get; }

    public IEnumerable<string> All => Directory.GetFiles(Folder, "*.xlsx").Order(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

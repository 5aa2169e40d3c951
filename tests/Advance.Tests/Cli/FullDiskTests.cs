using System.Diagnostics;

namespace Advance.Tests.Cli;

/// <summary>A disk that fills up while the package is written: nothing half-written stays, and what was there is as it was.</summary>
public sealed class FullDiskTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [SkippableFact]
    public void A_full_disk_leaves_the_last_package_as_it_was()
    {
        Skip.IfNot(CanMount(), "This machine lets a test make no small disk of its own.");
        var program = Path.Combine(AppContext.BaseDirectory, "advance.dll");
        var gig = Repository.Path("sample-gigs", "harvest-supper");
        var disk = scratch.Path("disk");
        Directory.CreateDirectory(disk);
        var script = $"mount -t tmpfs -o size=48k tmpfs {disk} && echo old > {disk}/plan.json && dotnet {program} build {gig} --out {disk}; "
            + $"echo code $?; ls {disk}; cat {disk}/plan.json";
        var run = Shell(script);

        Assert.Contains("code 2\nplan.json\nold\n", run);
        Assert.Contains("Nothing was written", run);
    }

    private static bool CanMount()
    {
        var can = OperatingSystem.IsLinux() && File.Exists("/usr/bin/unshare") && Shell("mount -t tmpfs tmpfs /mnt && echo yes").StartsWith("yes", StringComparison.Ordinal);
        return can || Environment.GetEnvironmentVariable("CI") == "true";
    }

    private static string Shell(string script)
    {
        var start = new ProcessStartInfo("/usr/bin/unshare", ["-rm", "/bin/sh", "-c", script + " 2>&1"]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        process.WaitForExit();
        return errors.Result + output.Result;
    }
}

using System.Diagnostics;
using Advance.Paper;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;

namespace Advance.Tests.Paper.Pdf;

/// <summary>An independent checker of the structure of PDF files finds nothing to say, the incremental update with bookmarks included.</summary>
public sealed class QpdfTests
{
    private const string Program = "/usr/bin/qpdf";

    public static TheoryData<string> Names => ["each block", "small gig", "horrors", "many pages"];

    [SkippableTheory]
    [MemberData(nameof(Names))]
    public void Qpdf_finds_no_fault(string name)
    {
        var isHere = File.Exists(Program);
        Assert.True(isHere || Environment.GetEnvironmentVariable("CI") != "true", "The gate needs qpdf.");
        Skip.IfNot(isHere, "There is no qpdf on this machine.");

        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, Printer.Print(Find(name), new PrintOptions { Html = false, Workbook = false }).Pdf!);
            using var check = Process.Start(new ProcessStartInfo(Program, ["--check", file]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = check.StandardError.ReadToEndAsync();
            var said = check.StandardOutput.ReadToEnd() + errors.Result;
            check.WaitForExit();
            Assert.True(check.ExitCode == 0, said);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static Document Find(string name) => name switch
    {
        "each block" => EachBlock.Document,
        "small gig" => HarvestSupper.Document,
        "many pages" => ManyPagesTests.Document,
        _ => Horrors.Document,
    };
}

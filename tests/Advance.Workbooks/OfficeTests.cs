using System.Diagnostics;

namespace Advance.Workbooks;

/// <summary>The workbooks as an office program opens them. Left out where none is installed.</summary>
[Collection(BooksCollection.Name)]
public sealed class OfficeTests(PrintedBooks books)
{
    [SkippableFact]
    public void It_reads_numbers_days_and_sums()
    {
        var office = new[] { "/usr/bin/soffice", "/usr/bin/libreoffice" }.FirstOrDefault(File.Exists);
        Skip.If(office is null, "no office program");
        var csv = Path.Combine(books.Folder, "harvest-supper.csv");
        using var process = Process.Start(new ProcessStartInfo(office!,
        [
            $"-env:UserInstallation=file://{books.Folder}/profile", "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1",
            "--outdir", books.Folder, Path.Combine(books.Folder, "harvest-supper.xlsx"),
        ])
        { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(2)));
        var lines = File.ReadAllText(csv).Replace("\"", "", StringComparison.Ordinal);
        Assert.StartsWith("Cct,Outlet,Device,RCD (mA)", lines, StringComparison.Ordinal);
        Assert.Contains("PD1 altogether,,,,,,,8.5,25.4,27", lines, StringComparison.Ordinal);
        Assert.Contains("228.6", lines, StringComparison.Ordinal);
    }
}

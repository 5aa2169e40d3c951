using System.Diagnostics;
using Advance.Paper;
using Advance.Tests.Paper.Examples;

namespace Advance.Benchmarks;

/// <summary>Without arguments runs the benchmarks; with <c>print FOLDER</c> prints the example documents there, for tests that need a process of their own.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        if (args is ["print", var folder])
            return Print(folder);
        return 0;
    }

    private static int Print(string folder)
    {
        Directory.CreateDirectory(folder);
        var watch = Stopwatch.StartNew();
        var printing = Printer.Print(HarvestSupper.Document);
        Console.WriteLine($"harvest-supper: {printing.PageCount} pages, {watch.ElapsedMilliseconds} ms cold");
        foreach (var fault in printing.Faults)
            Console.WriteLine($"  {fault.Kind} {fault.Sheet} {fault.Place}: {fault.Text}");
        File.WriteAllBytes(Path.Combine(folder, "harvest-supper.pdf"), printing.Pdf!);
        File.WriteAllText(Path.Combine(folder, "harvest-supper.html"), printing.Html);
        File.WriteAllBytes(Path.Combine(folder, "harvest-supper.xlsx"), printing.Workbook!);
        return 0;
    }
}

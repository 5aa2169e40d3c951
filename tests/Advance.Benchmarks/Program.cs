using System.Diagnostics;
using Advance.Paper;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;

namespace Advance.Benchmarks;

/// <summary>Without arguments runs the benchmarks; with <c>print FOLDER</c> prints the example documents there, for tests that need a process of their own.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        if (args is not ["print", var folder])
            return 0;
        Directory.CreateDirectory(folder);
        Print(folder, "harvest-supper", HarvestSupper.Document);
        Print(folder, "horrors", Horrors.Document);
        return 0;
    }

    private static void Print(string folder, string name, Document document)
    {
        var watch = Stopwatch.StartNew();
        var printing = Printer.Print(document);
        Console.WriteLine($"{name}: {printing.PageCount} pages in {watch.ElapsedMilliseconds} ms");
        foreach (var fault in printing.Faults)
            Console.WriteLine($"  {fault.Kind} {fault.Sheet} {fault.Place}: {fault.Text}");
        File.WriteAllBytes(Path.Combine(folder, $"{name}.pdf"), printing.Pdf!);
        File.WriteAllText(Path.Combine(folder, $"{name}.html"), printing.Html);
        File.WriteAllBytes(Path.Combine(folder, $"{name}.xlsx"), printing.Workbook!);
    }
}

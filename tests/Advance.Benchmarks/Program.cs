using Advance.Paper;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;
using BenchmarkDotNet.Running;

namespace Advance.Benchmarks;

/// <summary>Runs the benchmarks; with <c>print FOLDER</c> prints the example documents there, for tests that need a process of their own.</summary>
internal static class Program
{
    private static void Main(string[] args)
    {
        if (args is ["print", var folder])
        {
            Print(folder);
        }
        else
        {
            BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        }
    }

    private static void Print(string folder)
    {
        Directory.CreateDirectory(folder);
        Print(folder, "harvest-supper", HarvestSupper.Document);
        Print(folder, "blocks", EachBlock.Document);
        Print(folder, "horrors", Horrors.Document);
    }

    private static void Print(string folder, string name, Document document)
    {
        var printing = Printer.Print(document);
        Console.WriteLine($"{name}: {printing.PageCount} pages, {printing.Faults.Count} faults");
        foreach (var fault in printing.Faults)
        {
            Console.WriteLine($"  {fault.Kind} {fault.Sheet} {fault.Place}: {fault.Text}");
        }

        File.WriteAllBytes(Path.Combine(folder, $"{name}.pdf"), printing.Pdf!);
        File.WriteAllText(Path.Combine(folder, $"{name}.html"), printing.Html);
        File.WriteAllBytes(Path.Combine(folder, $"{name}.xlsx"), printing.Workbook!);
    }
}

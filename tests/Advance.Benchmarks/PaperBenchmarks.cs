using Advance.Paper;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;
using BenchmarkDotNet.Attributes;

namespace Advance.Benchmarks;

/// <summary>The printer, warm. A hundred dense pages shall take less than 350 ms, shaping included.</summary>
[MemoryDiagnoser]
public class PaperBenchmarks
{
    private static readonly PrintOptions OnlyPdf = new() { Html = false, Workbook = false };
    private static readonly Document Dense = DenseTables.Of(2800);
    private static readonly Document Crowd = Inlines.Doc(Inlines.OneSheet(new Picture(Horrors.Crowd(200), [])));

    [Benchmark]
    public Printing HundredDensePages() => Printer.Print(Dense, OnlyPdf);

    [Benchmark]
    public Printing FiveSheetsInAllForms() => Printer.Print(HarvestSupper.Document);

    [Benchmark]
    public Printing TwoHundredLabels() => Printer.Print(Crowd, OnlyPdf);
}

using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

/// <summary>An invented evening in a barn: the sheets that show what the printer can do.</summary>
internal static class HarvestSupper
{
    public static Document Document { get; } = Doc(DistributionSheet.Sheet, StagePlot.Sheet, SystemSheet.Sheet, PullList.Sheet);

    public static SheetHead Head(string title, string reader) => new(title)
    {
        For = T(reader),
        Lines = [T("Harvest Supper"), T("Sat 12 Sep 2026 · Tithe Barn, Nether Ambling"), T("J Tarrant, production manager · 01632 960 114")],
        Revision = "B",
        Issued = "Tue 1 Sep 2026",
    };

    public static SheetFoot Foot(string left) => new(T($"Lower Mill Sound & Light · {left}"), [Strong("4 TBC"), new Text(" in this package · "), Strong("1 stop"), new Text(": not for issue")]);
}

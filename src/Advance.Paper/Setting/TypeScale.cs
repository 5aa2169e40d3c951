using Advance.Paper.Tree;

namespace Advance.Paper.Setting;

/// <summary>The four sizes of a class of sheet, and the white space that goes with them. All in 1/1000 pt.</summary>
internal sealed class TypeScale
{
    private const double LeadingShare = 1.28;

    private TypeScale(double least, double small, double body, double large, double title, double tightness)
    {
        Least = Mil.FromPt(least);
        Small = Mil.FromPt(small);
        Body = Mil.FromPt(body);
        Large = Mil.FromPt(large);
        Title = Mil.FromPt(title);
        RowPad = (int)(Body * 0.32 * tightness);
        BlockGap = (int)(Body * 1.1 * tightness);
        ColumnGap = (int)(Body * 0.7);
    }

    /// <summary>Nothing is set smaller: 7 pt on a desk, 10 pt where one stands or holds a torch.</summary>
    public int Least { get; }

    public int Small { get; }

    public int Body { get; }

    public int Large { get; }

    public int Title { get; }

    /// <summary>Over and under the text of a row.</summary>
    public int RowPad { get; }

    /// <summary>Between blocks.</summary>
    public int BlockGap { get; }

    /// <summary>Between columns of a table.</summary>
    public int ColumnGap { get; }

    /// <summary>The sizes of a class.</summary>
    /// <param name="type">The class.</param>
    /// <param name="isStepDown">True for a size less, for tables that are too wide; never under the least size of the class.</param>
    /// <param name="tightness">Share of the usual white space between rows and blocks, over 0 to 1.</param>
    public static TypeScale For(TypeClass type, bool isStepDown = false, double tightness = 1) => (type, isStepDown) switch
    {
        (TypeClass.Desk, false) => new(7, 8, 9.5, 12, 20, tightness),
        (TypeClass.Desk, true) => new(7, 7, 8.2, 11, 20, tightness),
        (TypeClass.Floor, false) => new(10, 10, 12, 15, 22, tightness),
        (TypeClass.Floor, true) => new(10, 10, 10.5, 13, 22, tightness),
        (_, false) => new(10, 11.5, 15, 20, 26, tightness),
        (_, true) => new(10, 10, 12.5, 17, 26, tightness),
    };

    /// <summary>Height of a line of a size.</summary>
    public static int Leading(int size) => (int)(size * LeadingShare);

    /// <summary>From the top of a line to its base line: capitals stand in the middle of the line.</summary>
    public static int Baseline(int size) => (Leading(size) + (int)(size * BuiltIn.CapHeight)) / 2;

    /// <summary>How a text style is set.</summary>
    /// <param name="style">As the tree says.</param>
    /// <param name="around">What it stands in: its size is the one meant by normal, its weight goes on except to quiet text.</param>
    public TypeStyle Style(TextStyle style, TypeStyle around)
    {
        var strong = around.IsStrong || style.HasFlag(TextStyle.Strong);
        if (style.HasFlag(TextStyle.Large))
        {
            return new TypeStyle(Math.Max(Large, around.Size), strong, around.Shade);
        }

        if (style.HasFlag(TextStyle.Quiet))
        {
            return new TypeStyle(Math.Min(Small, around.Size), style.HasFlag(TextStyle.Strong), Shade.Soft);
        }

        return around with { IsStrong = strong };
    }
}

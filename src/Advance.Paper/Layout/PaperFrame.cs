using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A page's size and margins in 1/1000 pt.</summary>
/// <param name="Width">Of the paper as it is turned.</param>
/// <param name="Height">Of the paper as it is turned.</param>
internal readonly record struct PaperFrame(int Width, int Height)
{
    // Room for holes at the left; at the other edges a little more than a printer's gripper needs.
    private const double LeftMm = 17;
    private const double RightMm = 11;
    private const double TopMm = 11;
    private const double BottomMm = 7;

    public static int Left { get; } = Mil.FromMm(LeftMm);

    public static int Top { get; } = Mil.FromMm(TopMm);

    public int InnerWidth => Width - Left - Mil.FromMm(RightMm);

    public int InnerBottom => Height - Mil.FromMm(BottomMm);

    public static PaperFrame Of(PageSize size, Orientation orientation)
    {
        // To whole points, as the PDF library has it: a page that it rounds by itself would move all that stands on it.
        var (width, height) = size switch
        {
            PageSize.A3 => (842_000, 1_191_000),
            PageSize.Letter => (612_000, 792_000),
            PageSize.Tabloid => (792_000, 1_224_000),
            _ => (595_000, 842_000),
        };
        return orientation == Orientation.Landscape ? new PaperFrame(height, width) : new PaperFrame(width, height);
    }
}

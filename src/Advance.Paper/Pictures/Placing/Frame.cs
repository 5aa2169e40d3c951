using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>Takes points of a scene to the paper. Its corner is that of the scene, so that moving the whole scene changes nothing.</summary>
/// <param name="Left">The scene's least x, in mm of the scene.</param>
/// <param name="Top">The scene's least y, in mm of the scene.</param>
/// <param name="Scale">Millimetres of the paper to one of the scene, over 0.</param>
internal readonly record struct Frame(double Left, double Top, double Scale)
{
    private const int PaperLimit = 50_000_000;

    /// <summary>In 0.1 mm of the paper.</summary>
    public (int X, int Y) Tenths(Point point) => (Tenths((point.X - Left) * Scale), Tenths((point.Y - Top) * Scale));

    /// <summary>0.1 mm. First rounded finely, so that what lies between two of them falls the same way wherever the scene stands.</summary>
    public static int Tenths(double mm) => (int)Math.Clamp(
        Math.Round(Math.Round(mm * 10, 5, MidpointRounding.ToEven), MidpointRounding.AwayFromZero), -PaperLimit, PaperLimit);

    /// <summary>In 1/1000 pt of the paper.</summary>
    public (int X, int Y) Mils(Point point) => (Mils((point.X - Left) * Scale), Mils((point.Y - Top) * Scale));

    /// <summary>Length of the scene in 1/1000 pt of the paper.</summary>
    public int Mils(double length, bool isScene) => Mils(isScene ? length * Scale : length);

    /// <summary>0.1 mm in 1/1000 pt.</summary>
    public static int ToMils(int tenths) => Mil.FromMm(tenths / 10.0);

    /// <summary>1/1000 pt in 0.1 mm, rounded up.</summary>
    public static int UpToTenths(int mils) => (int)Math.Ceiling(Mil.ToMm(mils) * 10);

    private static int Mils(double mm) => Mil.FromMm(Math.Clamp(mm, -PaperLimit / 10.0, PaperLimit / 10.0));
}

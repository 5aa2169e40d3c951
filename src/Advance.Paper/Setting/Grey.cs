namespace Advance.Paper.Setting;

/// <summary>Shades as colours, the same for all writers.</summary>
internal static class Grey
{
    /// <summary>As 0xRRGGBB.</summary>
    public static int Of(Shade shade) => shade switch
    {
        Shade.Ink => 0x111111,
        Shade.Soft => 0x4A4A4A,
        Shade.Hair => 0xB4B4B4,
        Shade.Pale => 0xDEDEDE,
        _ => 0xFFFFFF,
    };
}

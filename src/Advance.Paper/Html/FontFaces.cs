using Advance.Paper.Setting;

namespace Advance.Paper.Html;

/// <summary>The fonts of the page, once for text and pictures.</summary>
internal static class FontFaces
{
    private static readonly Lazy<string> LazyCss = new(() => Face("Inter-Regular.woff2", 400) + Face("Inter-Bold.woff2", 700));

    public static string Css() => LazyCss.Value;

    private static string Face(string resource, int weight) =>
        $"@font-face{{font-family:Inter;font-weight:{weight};src:url(data:font/woff2;base64,{Convert.ToBase64String(BuiltIn.Resource(resource))}) format('woff2')}}\n";
}

namespace Advance.Paper.Setting;

/// <summary>The two weights of Inter that the assembly carries, opened when first asked for.</summary>
internal static class BuiltIn
{
    private static readonly Lazy<Face> LazyRegular = new(() => OpenFace("Inter-Regular.ttf"));
    private static readonly Lazy<Face> LazyBold = new(() => OpenFace("Inter-Bold.ttf"));

    /// <summary>Height of a capital letter of Inter as a share of the size.</summary>
    public const double CapHeight = 1490.0 / 2048;

    /// <summary>How far letters reach under the base line, as a share of the size.</summary>
    public const double Descent = 0.21;

    public static Face Regular => LazyRegular.Value;

    public static Face Bold => LazyBold.Value;

    public static byte[] Resource(string name)
    {
        using var stream = typeof(BuiltIn).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The assembly lacks its resource {name}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Face OpenFace(string name) =>
        Face.Open(name, Resource(name)) ?? throw new InvalidOperationException($"The resource {name} is no font.");
}

namespace Advance.Tests;

/// <summary>The checkout that the tests run in.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    /// <summary>Source files of a folder, without what the build made.</summary>
    public static IEnumerable<string> SourceFiles(string folder) =>
        Directory.EnumerateFiles(Path(folder), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(System.IO.Path.Combine(folder, "Advance.sln")))
        {
            folder = System.IO.Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run outside a checkout.");
        }

        return folder;
    }
}

using System.CommandLine;

namespace Advance.Cli.Commands;

/// <summary>The gig that a command is about: its folder, or the file in it.</summary>
internal static class GigArgument
{
    private const string UsualFile = "gig.yaml";

    public static Argument<string> Make() => new("GIG") { Description = "The folder that holds gig.yaml, or the file itself." };

    /// <summary>The folder that holds the gig's tree (the one above the gig's own, so that gigs can share venues and a stock) and the gig's path in it.</summary>
    public static (string Root, string Path) Locate(string given)
    {
        var full = Path.GetFullPath(given);
        var file = Directory.Exists(full) ? Path.Combine(full, UsualFile) : full;
        var folder = Path.GetDirectoryName(file) ?? full;
        var root = Path.GetDirectoryName(folder) ?? folder;
        return (root, Path.GetRelativePath(root, file).Replace('\\', '/'));
    }

    /// <summary>The gig's own folder.</summary>
    public static string FolderOf(string given)
    {
        var (root, path) = Locate(given);
        return Path.Combine(root, Path.GetDirectoryName(path) ?? "");
    }
}

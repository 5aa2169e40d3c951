namespace Advance.Reading.Files;

/// <summary>Paths inside the folder that holds the gig's tree.</summary>
public static class TreePath
{
    /// <summary>What a reference in a file leads to.</summary>
    /// <param name="from">The file that holds the reference.</param>
    /// <param name="reference">As written: relative to the folder of <paramref name="from"/>, with forward slashes.</param>
    /// <param name="path">The path relative to the tree's folder; empty is that folder itself.</param>
    /// <returns>Whether it is a relative path that stays inside.</returns>
    public static bool TryResolve(string from, string reference, out string path)
    {
        path = "";
        if (IsAbsolute(reference))
        {
            return false;
        }

        var steps = new List<string>(FolderOf(from).Split('/', StringSplitOptions.RemoveEmptyEntries));
        foreach (var step in reference.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == "..")
            {
                if (steps.Count == 0)
                {
                    return false;
                }

                steps.RemoveAt(steps.Count - 1);
            }
            else if (step != ".")
            {
                steps.Add(step);
            }
        }

        path = string.Join('/', steps);
        return true;
    }

    /// <summary>A file in a folder.</summary>
    public static string Join(string folder, string name) => folder.Length == 0 ? name : $"{folder}/{name}";

    /// <summary>Whether a reference does not start from a file, or means different things on two systems: a backslash or a colon is a
    /// drive, a share or a stream on some.</summary>
    public static bool IsAbsolute(string reference) => reference.StartsWith('/') || reference.StartsWith('~') || reference.AsSpan().ContainsAny('\\', ':', '\0');

    private static string FolderOf(string file) => file.LastIndexOf('/') is var slash and >= 0 ? file[..slash] : "";
}

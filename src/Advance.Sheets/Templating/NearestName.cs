using Advance.Domain.Naming;

namespace Advance.Sheets.Templating;

/// <summary>Finds what somebody may have meant by a name that is not known.</summary>
internal static class NearestName
{
    private const int MostListed = 12;

    /// <summary>The cure for an unknown name: the nearest known one, or all where they are few, or nothing.</summary>
    public static string Cure(string unknown, IReadOnlyCollection<string> known)
    {
        if (Nearest.To(unknown, known) is { } nearest)
        {
            return $"Did you mean `{nearest}`?";
        }

        return known.Count is > 0 and <= MostListed ? $"Known here: {string.Join(", ", known.Select(name => $"`{name}`"))}." : "";
    }
}

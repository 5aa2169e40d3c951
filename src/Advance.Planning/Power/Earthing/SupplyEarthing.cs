using Advance.Domain.Facts;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>What a service says about its earth.</summary>
internal static class SupplyEarthing
{
    // The longer words first: TN-C-S is no TN-S, and what the trade also says for it.
    private static readonly (string Word, SystemEarthing System)[] Words =
    [
        ("TN-C-S", SystemEarthing.TnCS),
        ("PME", SystemEarthing.TnCS),
        ("TN-S", SystemEarthing.TnS),
        ("TT", SystemEarthing.TT),
        ("IT", SystemEarthing.IT),
        ("separately derived", SystemEarthing.SeparatelyDerived),
    ];

    /// <summary>The system that a text names, such as <c>TT</c> or <c>TN-S, earth rod</c>; null where it names none.</summary>
    public static SystemEarthing? Read(string text)
    {
        var parts = text.Split([',', ';', '(', ')'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var (word, system) in Words)
        {
            if (parts.Any(part => string.Equals(part, word, StringComparison.OrdinalIgnoreCase) || part.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase)))
            {
                return system;
            }
        }

        return null;
    }

    /// <summary>The system of a service; null where nobody knows.</summary>
    public static SystemEarthing? Of(Service service) => service.Earthing.Is(out var text) ? Read(text) : null;

    /// <summary>Whether it is a source of its own, so that nobody else joins its neutral to earth.</summary>
    public static bool IsOwnSource(Service service) => service.Generator is not null || Of(service) == SystemEarthing.SeparatelyDerived;

    /// <summary>Whether its neutral is joined to earth; null where nobody knows.</summary>
    public static bool? IsLinked(Service service) => Linked(service.NeutralEarthLink) ?? (Of(service) is SystemEarthing.TnS or SystemEarthing.TnCS or SystemEarthing.TT && service.Generator is null ? true : null);

    private static bool? Linked(Given<string>? link) => link is { IsKnown: true } said ? !string.Equals(said.Value.Trim(), "none", StringComparison.OrdinalIgnoreCase) : null;
}

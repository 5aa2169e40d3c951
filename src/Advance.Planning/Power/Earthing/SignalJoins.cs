using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Analogue lines between units on different services: their screens join what the services' earths keep apart.</summary>
internal static class SignalJoins
{
    /// <summary>For each two services, by their names in the order of the alphabet, the lines between them.</summary>
    /// <remarks>What has no mains, such as a microphone, joins nothing; a network has transformers.</remarks>
    public static ILookup<(string One, string Other), Link> Of(Plan plan)
    {
        var services = new Dictionary<string, Service>(StringComparer.Ordinal);
        foreach (var circuit in plan.Power.Circuits.Where(circuit => circuit.Outlet.Origin is not null))
        {
            foreach (var load in circuit.Chain.Loads)
            {
                services.TryAdd(load.Name, circuit.Outlet.Origin!);
            }
        }

        return plan.Links.Where(link => link.Carries is "mic-line" or "line")
            .Select(link => (Link: link, From: services.GetValueOrDefault(link.From.Port.Device)?.Name, To: services.GetValueOrDefault(link.To.Port.Device)?.Name))
            .Where(line => line.From is not null && line.To is not null && line.From != line.To)
            .ToLookup(line => Pair(line.From!, line.To!), line => line.Link);
    }

    /// <summary>How two services are looked up.</summary>
    public static (string One, string Other) Pair(string one, string other) => string.CompareOrdinal(one, other) < 0 ? (one, other) : (other, one);
}

using System.Text.Json.Nodes;

namespace Advance.Tests.Reading.Schema;

/// <summary>Spoils a sample in one place, or leaves it.</summary>
internal static class Mutation
{
    private static readonly string[] Junk = ["TBC", "TBC venue by 4 Sep", "5", "12 kg", "SR 4 m", "20:00 for 45 min", "yes", "a | b", "63 A TBC", "Sat 12 Sep 2026", "x, y", "10-11"];

    public static JsonNode Of(JsonNode sample, Func<int, int> next)
    {
        var places = Places(sample).ToList();
        if (places.Count == 0)
        {
            return sample;
        }

        var (holder, key) = places[next(places.Count)];
        switch (holder)
        {
            case JsonObject map when next(4) == 0:
                map.Remove((string)key);
                break;
            case JsonObject map when next(4) == 0:
                map["quiche"] = "x";
                break;
            case JsonObject map:
                map[(string)key] = Other(next);
                break;
            case JsonArray list:
                list[(int)key] = Other(next);
                break;
        }

        return sample;
    }

    private static JsonNode? Other(Func<int, int> next) => next(6) switch
    {
        0 => null,
        1 => new JsonArray("x"),
        2 => new JsonObject { ["x"] = "y" },
        _ => Junk[next(Junk.Length)],
    };

    private static IEnumerable<(JsonNode Holder, object Key)> Places(JsonNode node) => node switch
    {
        JsonObject map => map.SelectMany(entry => (entry.Value is null ? [] : Places(entry.Value)).Prepend((map, entry.Key))),
        JsonArray list => list.SelectMany((item, index) => (item is null ? [] : Places(item)).Prepend((list, index))),
        _ => [],
    };
}

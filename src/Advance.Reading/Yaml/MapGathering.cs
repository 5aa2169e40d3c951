using Advance.Domain.Findings;

namespace Advance.Reading.Yaml;

/// <summary>A map while its entries come in.</summary>
internal sealed class MapGathering(ICollection<Finding> findings)
{
    private readonly List<MapEntry> entries = [];
    private readonly Dictionary<string, ScalarNode> keys = new(StringComparer.Ordinal);
    private readonly List<MapNode> merged = [];

    public int Weight { get; private set; } = 1;

    /// <summary>Whether an entry had to be left out.</summary>
    public bool IsPartial { get; private set; }

    public void Add(Node key, Node value)
    {
        Weight += value.Weight + 1;
        if (key is not ScalarNode name)
        {
            IsPartial = true;
            if (key is not SpoiltNode)
            {
                findings.Add(SyntaxFindings.KeyIsNotText(key.At, key.Kind));
            }
        }
        else if (name.Text == "<<")
        {
            Merge(name, value);
        }
        else if (name.IsBlank)
        {
            IsPartial = true;
            findings.Add(SyntaxFindings.KeyIsBlank(name.At));
        }
        else if (keys.TryAdd(name.Text, name))
        {
            entries.Add(new(name, value));
        }
        else
        {
            findings.Add(SyntaxFindings.KeyTwice(name.At, name.Text, keys[name.Text].At));
        }
    }

    /// <summary>The entries written here, then those of merged maps whose keys are not among them.</summary>
    public IReadOnlyList<MapEntry> Finish()
    {
        foreach (var entry in merged.SelectMany(map => map.Entries))
        {
            if (keys.TryAdd(entry.Key.Text, entry.Key))
            {
                entries.Add(entry);
            }
        }

        return entries;
    }

    private void Merge(ScalarNode sign, Node value)
    {
        IReadOnlyList<Node> maps = value is ListNode list ? list.Items : [value];
        foreach (var one in maps)
        {
            if (one is MapNode map)
            {
                merged.Add(map);
                IsPartial |= map.IsPartial;
            }
            else if (one is not SpoiltNode)
            {
                findings.Add(SyntaxFindings.MergeNeedsMap(sign.At, one.Kind));
            }
        }
    }
}

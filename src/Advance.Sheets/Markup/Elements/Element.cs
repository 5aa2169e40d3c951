using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Markup.Subset;

namespace Advance.Sheets.Markup.Elements;

/// <summary>An element of the subset, with what stands in it. What the subset does not allow is not in it.</summary>
internal sealed class Element(int at, Form form) : Node(at)
{
    private readonly Dictionary<string, string> attributes = new(StringComparer.Ordinal);

    /// <summary>What it is.</summary>
    public Form Form { get; } = form;

    /// <summary>Words of its class, but for the one that says what it is.</summary>
    public HashSet<string> Words { get; } = new(StringComparer.Ordinal);

    /// <summary>Text and elements, in order.</summary>
    public List<Node> Children { get; } = [];

    /// <summary>The elements among the children.</summary>
    public IEnumerable<Element> Elements => Children.OfType<Element>();

    /// <summary>All attributes but the class, by name.</summary>
    public IReadOnlyDictionary<string, string> Attributes => attributes;

    /// <summary>A name that links lead to, or null.</summary>
    public string? Id => Text("id");

    public void Put(string name, string value) => attributes[name] = value;

    /// <summary>The value of an attribute, or null.</summary>
    public string? Text(string name) => attributes.GetValueOrDefault(name);

    /// <summary>A number, or null.</summary>
    public double? Number(string name) => Text(name) is { } text ? Values.Number(text) : null;

    /// <summary>Which of the words that an attribute can have it has, counted from 0, or null. An enumeration counts the same way.</summary>
    public int? Word(string name)
    {
        var words = Form.Attributes.FirstOrDefault(rule => rule.Name == name)?.Value.Words ?? [];
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] == Text(name))
            {
                return i;
            }
        }

        return null;
    }

    /// <summary>The first element with a name among the children, or null.</summary>
    public Element? First(string name) => Elements.FirstOrDefault(child => child.Form.Name == name);
}

using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Templating;

namespace Advance.Sheets.Markup.Building;

/// <summary>Has drawings made for figures.</summary>
internal sealed class Figures(IReadOnlyList<Drawing> drawings, MarkupFaults faults)
{
    private const string Prefix = "data-";

    /// <summary>A picture, or null after a fault.</summary>
    public Picture? Make(Element element)
    {
        var caption = element.First("figcaption") is { } found ? Line.Of(found, faults) : [];
        return Draw(element) is { } scene ? new(scene, caption) { MostHeightMm = element.Number("data-most-mm") } : null;
    }

    /// <summary>The scene of a figure, or null after a fault.</summary>
    public Scene? Draw(Element element)
    {
        if (element.Elements.Count() > 1)
        {
            faults.Add(element.Elements.Last().At, "A `figure` has one caption.");
        }

        if (element.Text("data-drawing") is not { } name)
        {
            return null;
        }

        var drawing = drawings.FirstOrDefault(known => known.Name == name);
        if (drawing is null)
        {
            faults.Add(element.At, $"There is no drawing `{name}`.", NearestName.Cure(name, [.. drawings.Select(known => known.Name)]));
            return null;
        }

        var asked = element.Attributes
            .Where(attribute => element.Form.Attributes.All(rule => rule.Name != attribute.Key))
            .ToDictionary(attribute => attribute.Key[Prefix.Length..], attribute => attribute.Value, StringComparer.Ordinal);
        var strange = asked.Keys.Where(key => !drawing.Takes.Contains(key)).ToList();
        foreach (var key in strange)
        {
            faults.Add(element.At, $"The drawing `{name}` has no `{Prefix}{key}`.", NearestName.Cure(key, [.. drawing.Takes]));
        }

        return strange.Count > 0 ? null : Draw(element, drawing, asked);
    }

    private Scene? Draw(Element element, Drawing drawing, Dictionary<string, string> asked)
    {
        var scene = drawing.Draw(asked);
        if (scene is null)
        {
            var told = asked.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => $"{Prefix}{pair.Key}=\"{pair.Value}\"");
            faults.Add(element.At, $"The drawing `{drawing.Name}` cannot be made{(asked.Count > 0 ? " for " : "")}{string.Join(' ', told)}.");
        }

        return scene;
    }
}

using Advance.Domain.Naming;
using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Markup.Subset;
using Advance.Sheets.Templating;

namespace Advance.Sheets.Markup.Elements;

/// <summary>Finds what a tag is in the subset, and what is wrong with it.</summary>
internal sealed class FormFinder(MarkupFaults faults)
{
    private readonly Dictionary<string, int> ids = new(StringComparer.Ordinal);

    /// <summary>An element for a person: <c>`td`</c>, or a template for the outermost place.</summary>
    public static string Called(Form form) => form.Name.Length == 0 ? "a template, outside its sheets" : $"`{form.Title}`";

    /// <summary>The element that a tag opens, or null for one that the subset does not know.</summary>
    public Element? Find(OpenTag tag, Element holder)
    {
        var forms = Forms.Named(tag.Name);
        if (forms.Count == 0)
        {
            faults.Add(tag.At, $"There is no element `{tag.Name}`.", NearestName.Cure(tag.Name, Forms.Names), tag.Name.Length + 1);
            return null;
        }

        var words = tag.Attributes.FirstOrDefault(attribute => attribute.Name == "class");
        var split = words?.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [];
        var form = forms.Find(candidate => candidate.Class is not null && split.Contains(candidate.Class))
            ?? forms.Find(candidate => candidate.Class is null && holder.Form.CanHold(candidate));
        if (form is null && forms.Exists(holder.Form.CanHold))
        {
            return Guess(tag, words, forms);
        }

        form ??= forms[0];
        if (!holder.Form.CanHold(form))
        {
            faults.Add(tag.At, $"{Called(form)} cannot stand in {Called(holder.Form)}.", WhereToStand(form), tag.Name.Length + 1);
        }

        var element = new Element(tag.At, form);
        ReadWords(element, words, split, forms);
        ReadAttributes(element, tag);
        return element;
    }

    // With the class that was probably meant, what stands in the element is looked at as it was meant, too.
    private Element? Guess(OpenTag tag, Scanning.Attribute? words, List<Form> forms)
    {
        var written = words?.Value ?? "";
        faults.Add(words?.At ?? tag.At, $"`{tag.Name}` needs a class here that says what it is.", NearestName.Cure(written, Classes(forms)));
        if (Nearest.To(written, Classes(forms)) is not { } nearest)
        {
            return null;
        }

        var element = new Element(tag.At, forms.Find(form => form.Class == nearest)!);
        ReadAttributes(element, tag);
        return element;
    }

    private static List<string> Classes(List<Form> forms) => [.. forms.Where(form => form.Class is not null).Select(form => form.Class!)];

    private static string WhereToStand(Form form) => form.Is == Content.Sheet
        ? "It stands in no other element."
        : $"It stands in {string.Join(", ", Forms.All.Where(other => other.CanHold(form)).Select(Called))}.";

    private void ReadWords(Element element, Scanning.Attribute? words, string[] split, List<Form> forms)
    {
        foreach (var word in split.Where(word => word != element.Form.Class))
        {
            if (element.Form.Words.Any(known => known.Word == word))
            {
                element.Words.Add(word);
            }
            else
            {
                faults.Add(
                    words!.At,
                    $"{Called(element.Form)} has no class `{word}`.",
                    NearestName.Cure(word, [.. element.Form.Words.Select(known => known.Word), .. Classes(forms)]),
                    words.Name.Length);
            }
        }
    }

    private void ReadAttributes(Element element, OpenTag tag)
    {
        foreach (var attribute in tag.Attributes.Where(attribute => attribute.Name != "class"))
        {
            var rule = element.Form.Attributes.FirstOrDefault(rule => rule.Name == attribute.Name);
            if (rule is null && !(element.Form.TakesMore && attribute.Name.StartsWith("data-", StringComparison.Ordinal)))
            {
                var known = element.Form.Attributes.Select(other => other.Name).ToList();
                faults.Add(
                    attribute.At,
                    $"{Called(element.Form)} has no `{attribute.Name}`.",
                    NearestName.Cure(attribute.Name, known),
                    attribute.Name.Length);
            }
            else if (rule is not null && !rule.Value.Allows(attribute.Value))
            {
                faults.Add(
                    attribute.At,
                    $"`{attribute.Name}=\"{attribute.Value}\"` is not {rule.Value.Says}.",
                    Nearest.To(attribute.Value, rule.Value.Words) is { } nearest ? $"Did you mean `{nearest}`?" : "",
                    attribute.Name.Length);
            }
            else
            {
                element.Put(attribute.Name, attribute.Value);
            }
        }

        foreach (var rule in element.Form.Attributes)
        {
            if (rule.IsRequired && !tag.Attributes.Any(attribute => attribute.Name == rule.Name))
            {
                faults.Add(tag.At, $"{Called(element.Form)} needs `{rule.Name}`: {rule.Means}.", length: tag.Name.Length + 1);
            }
        }

        if (element.Id is { } id && !ids.TryAdd(id, tag.At))
        {
            faults.Add(tag.At, $"The id `{id}` stands twice.", $"The other is at {faults.Place(ids[id])}.");
        }
    }
}

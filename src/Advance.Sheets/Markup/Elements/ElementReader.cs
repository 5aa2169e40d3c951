using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Markup.Subset;

namespace Advance.Sheets.Markup.Elements;

/// <summary>Puts tags together to elements, and holds them against the subset. After a fault it goes on as a person would.</summary>
internal sealed class ElementReader(string text, MarkupFaults faults)
{
    // Deeper than any sheet, and far from where the stack ends.
    private const int MostDepth = 60;

    private readonly Scanner scanner = new(text, faults);
    private readonly FormFinder forms = new(faults);
    private readonly Stack<OpenElement> open = new();

    /// <summary>Reads all of it.</summary>
    /// <returns>A root that holds the sheets.</returns>
    public Element Read()
    {
        var root = new Element(0, new Form("", null, Content.None, Content.Sheet) { Means = "a template", Gives = typeof(object) });
        open.Push(new(0, "", root, root));
        while (scanner.Next() is { } node)
        {
            CloseWhatHoldsNothing(node);
            switch (node)
            {
                case OpenTag tag when !Open(tag):
                    return root;
                case CloseTag tag:
                    Close(tag);
                    break;
                case Characters characters:
                    Take(characters);
                    break;
            }
        }

        while (open.Count > 1)
        {
            LeaveOpen(open.Pop(), "the end of the template");
        }

        return root;
    }

    private bool Open(OpenTag tag)
    {
        if (open.Count > MostDepth)
        {
            faults.Add(tag.At, $"Elements stand more than {MostDepth} deep in each other here; nothing after this was read.");
            return false;
        }

        var holder = open.Peek().Holder;
        var element = forms.Find(tag, holder);
        if (element is not null && holder.Form.CanHold(element.Form))
        {
            holder.Children.Add(element);
        }

        if (!tag.IsClosed)
        {
            open.Push(new(tag.At, tag.Name, element, element ?? holder));
        }

        return true;
    }

    private void Close(CloseTag tag)
    {
        if (!open.Any(entry => entry.Name == tag.Name && entry.Name.Length > 0))
        {
            faults.Add(tag.At, $"`</{tag.Name}>` closes nothing.", length: tag.Name.Length + 3);
            return;
        }

        while (open.Peek().Name != tag.Name)
        {
            LeaveOpen(open.Pop(), $"`</{tag.Name}>` at {faults.Place(tag.At)}");
        }

        open.Pop();
    }

    private void Take(Characters characters)
    {
        var holder = open.Peek().Holder;
        if (holder.Form.Holds.HasFlag(Content.Text))
        {
            holder.Children.Add(characters);
        }
        else if (characters.Text.Length > 0)
        {
            var start = characters.Text.Length > 20 ? characters.Text[..20] + "…" : characters.Text;
            faults.Add(characters.At, $"Text cannot stand in {FormFinder.Called(holder.Form)}: `{start}`.");
        }
    }

    // As in `<br>`: what can hold nothing ends where it begins.
    private void CloseWhatHoldsNothing(Node next)
    {
        var entry = open.Peek();
        var waits = next is Characters { Text: "" } || (next is CloseTag tag && tag.Name == entry.Name);
        if (entry.Element is { Form.Holds: Content.None } && !waits)
        {
            open.Pop();
            faults.Add(entry.At, $"`{entry.Name}` is not closed.", $"Write `<{entry.Name}/>`.", entry.Name.Length + 1);
        }
    }

    private void LeaveOpen(OpenElement entry, string before) =>
        faults.Add(entry.At, $"`{entry.Name}` is not closed.", $"It has to end before {before}.", entry.Name.Length + 1);
}

using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Facts;
using Advance.Domain.Naming;

namespace Advance.Reading.Phrases;

/// <summary>Counted items, ports and owners.</summary>
internal static class Things
{
    private static readonly (string Word, Stance Stance)[] Stances = [("upside-down", Stance.UpsideDown), ("rear-facing", Stance.RearFacing)];

    private static readonly (string Word, PortKind Kind)[] Ports =
        [("in", PortKind.Input), ("out", PortKind.Output), ("outlet", PortKind.Outlet), ("link", PortKind.Link)];

    private static readonly (string Word, OwnerKind Kind, bool MayName)[] Owners =
        [("shop", OwnerKind.Shop, false), ("venue", OwnerKind.Venue, false), ("client", OwnerKind.Client, false), ("act", OwnerKind.Act, true), ("hire", OwnerKind.Hire, true)];

    /// <summary>So many of an item, and how it stands.</summary>
    public static readonly Phrase<CountedItem> Counted = new(
        "counted-item", "an item", Patterns.Text, ["6 x wedge-12", "top-10 upside-down", "drum kit", "sub-18 rear-facing upside-down"], ReadCounted);

    /// <summary>Ports of a device.</summary>
    public static readonly Phrase<PortRange> Port = new(
        "ports", "a device and its ports", Patterns.Text, ["DRIVE out 1-2", "SB1 in 3", "PD1 outlet 3", "FOH"], ReadPort);

    /// <summary>Whose a thing is.</summary>
    public static readonly Phrase<Owner> Owner = new(
        "owner",
        "an owner",
        $@"(?:shop|venue|client|(?:act|hire)(?:\s+{Patterns.Text})?)",
        ["shop", "venue", "act", "client", "hire Northern Light and Sound"],
        ReadOwner);

    private static bool ReadCounted(Cursor cursor, [MaybeNullWhen(false)] out CountedItem item)
    {
        item = null;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!TakeCount(cursor, out var count))
        {
            (count, cursor.At) = (1, start);
        }
        else if (count == 0)
        {
            return cursor.Fail(PhraseFaults.OutOfRange(start, "0", "1 and more"));
        }

        var end = cursor.Text.TrimEnd(' ').Length;
        var stance = Stance.Usual;
        for (var word = LastWord(cursor, end); StanceOf(word) is { } one; word = LastWord(cursor, end))
        {
            stance |= one;
            end = cursor.Text.AsSpan(0, end - word.Length).TrimEnd().Length;
        }

        item = new(count, cursor.Written(Math.Min(cursor.At, end), end), stance);
        cursor.At = cursor.Text.Length;
        return item.Item.Length > 0;
    }

    // The space after the x tells 6 x wedge from an item whose name starts with a number.
    private static bool TakeCount(Cursor cursor, out int count)
    {
        if (!char.IsAsciiDigit(cursor.Now) || !cursor.Whole(out count))
        {
            count = 0;
            return false;
        }

        cursor.SkipSpaces();
        return cursor.Take('x') && cursor.SkipSpaces();
    }

    private static string LastWord(Cursor cursor, int end)
    {
        var text = cursor.Text.AsSpan(0, end);
        return text[(text.LastIndexOf(' ') + 1)..].ToString();
    }

    private static Stance? StanceOf(string word)
    {
        foreach (var (name, stance) in Stances)
        {
            if (word == name)
            {
                return stance;
            }
        }

        return null;
    }

    private static bool ReadPort(Cursor cursor, [MaybeNullWhen(false)] out PortRange ports)
    {
        var text = cursor.Written(cursor.At, cursor.Text.Length);
        cursor.At = cursor.Text.Length;
        ports = PortsOf(text);
        return text.Length > 0;
    }

    private static PortRange PortsOf(string text)
    {
        foreach (var (word, kind) in Ports)
        {
            var at = text.LastIndexOf($" {word}", StringComparison.Ordinal);
            var after = at + 1 + word.Length;
            if (at <= 0 || (after < text.Length && text[after] != ' '))
            {
                continue;
            }

            var device = text[..at].TrimEnd();
            var numbers = text[after..].Trim();
            if (numbers.Length == 0)
            {
                return new(device, kind);
            }

            if (Counts.Range.TryRead(numbers, out var range, out _))
            {
                return new(device, kind, range);
            }
        }

        return new(text);
    }

    private static bool ReadOwner(Cursor cursor, [MaybeNullWhen(false)] out Owner owner)
    {
        cursor.SkipSpaces();
        var start = cursor.At;
        var word = cursor.PeekWord() is { Length: > 0 } next ? next.ToString() : cursor.Written(start, cursor.Text.Length);
        foreach (var (name, kind, mayName) in Owners)
        {
            if (word == name && cursor.TakeWord(name))
            {
                var who = mayName ? cursor.Written(cursor.At, cursor.Text.Length) : "";
                cursor.At = mayName ? cursor.Text.Length : cursor.At;
                owner = new(kind, who.Length > 0 ? who : null);
                return true;
            }
        }

        owner = null;
        return cursor.Fail(PhraseFaults.NotAWord(start, word, "shop, venue, act, client, hire and the supplier's name", Nearest.To(word, Owners.Select(one => one.Word))));
    }
}

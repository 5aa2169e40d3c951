namespace Advance.Sheets.Views;

/// <summary>What addresses have in common at both ends, so that paper need not say it in each row: <c>power/…/at-most</c>.</summary>
/// <param name="Head">Parts that all begin with.</param>
/// <param name="Tail">Parts that all end with.</param>
internal sealed record SharedAddress(string[] Head, string[] Tail)
{
    /// <summary>With … for what is an address's own; empty where nothing is shared.</summary>
    public string Text => Head.Length + Tail.Length == 0 ? "" : string.Join('/', [.. Head, "…", .. Tail]);

    /// <summary>What some addresses share; one alone shares nothing. Each keeps one part of its own at least.</summary>
    public static SharedAddress Of(IReadOnlyList<string> addresses)
    {
        var paths = addresses.Select(address => address.Split('/')).ToList();
        if (paths.Count < 2)
        {
            return new SharedAddress([], []);
        }

        var first = paths[0];
        var most = paths.Min(path => path.Length) - 1;
        var head = Enumerable.Range(0, most).TakeWhile(at => paths.TrueForAll(path => path[at] == first[at])).Count();
        var tail = Enumerable.Range(1, most - head).TakeWhile(back => paths.TrueForAll(path => path[^back] == first[^back])).Count();
        return new SharedAddress(first[..head], first[^tail..]);
    }

    /// <summary>The part of an address that is its own.</summary>
    public string Own(string address)
    {
        var path = address.Split('/');
        return string.Join('/', path[Head.Length..^Tail.Length]);
    }
}

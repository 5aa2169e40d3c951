namespace Advance.Paper.Setting;

/// <summary>The ids of a document, and what a link may lead to.</summary>
internal sealed class Targets(HashSet<string> ids, Faults faults)
{
    /// <summary>For each id its page as far as that is known; empty before anything has been laid out.</summary>
    public IReadOnlyDictionary<string, int> Pages { get; init; } = new Dictionary<string, int>();

    /// <summary>The id itself when the document has it; else null and a fault.</summary>
    public string? Find(string id)
    {
        if (ids.Contains(id))
        {
            return id;
        }

        faults.Add(FaultKind.BadLink, $"Nothing in the document has the id \"{id}\".");
        return null;
    }

    /// <summary>The target itself when it may be led to; else null and a fault.</summary>
    public string? Accept(string target)
    {
        if (target.StartsWith('#'))
        {
            return Find(target[1..]) is null ? null : target;
        }

        if (IsSafe(target))
        {
            return target;
        }

        faults.Add(FaultKind.BadLink, $"\"{target}\" is no address that a sheet may lead to: only http, https, mailto and tel are.");
        return null;
    }

    /// <summary>True for an address that does nothing but open a page, a mail or a call.</summary>
    public static bool IsSafe(string target)
    {
        foreach (var c in target)
        {
            if (c <= ' ' || c == '\u007f')
            {
                return false;
            }
        }

        return target.StartsWith("https://", StringComparison.OrdinalIgnoreCase)
            || target.StartsWith("http://", StringComparison.OrdinalIgnoreCase)
            || target.StartsWith("mailto:", StringComparison.OrdinalIgnoreCase)
            || target.StartsWith("tel:", StringComparison.OrdinalIgnoreCase);
    }
}

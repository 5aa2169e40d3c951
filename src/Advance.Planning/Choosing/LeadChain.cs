namespace Advance.Planning;

/// <summary>Leads joined one to the other.</summary>
/// <param name="Leads">From the source on; at least one.</param>
/// <param name="LongestWithout">The longest that it still is when one of its leads is left out and the rest can be joined; -1 where it cannot.</param>
internal sealed record LeadChain(IReadOnlyList<LeadKind> Leads, long LongestWithout)
{
    /// <summary>Between the ids of its leads where it is written as text.</summary>
    public const string Plus = " + ";

    /// <summary>In millimetres.</summary>
    public long Total { get; } = Leads.Sum(lead => lead.Millimetres);

    /// <summary>How many times two leads are plugged together.</summary>
    public int Joins => Leads.Count - 1;

    /// <summary>The ids of its leads, from the source on.</summary>
    public string Text { get; } = string.Join(Plus, Leads.Select(lead => lead.Kind.Id));

    /// <summary>How many of a kind it takes off the shelf, where one of another kind comes along with the unit anyway.</summary>
    public int Takes(string id, string? own) => Math.Max(0, Leads.Count(lead => lead.Kind.Id == id) - (id == own ? 1 : 0));
}

namespace Advance.Sheets.Markup.Subset;

/// <summary>What the value of an attribute can be.</summary>
/// <param name="Says">As a person would say it: <c>a number over 0</c>.</param>
/// <param name="Allows">Whether a value is one.</param>
internal sealed record ValueRule(string Says, Func<string, bool> Allows)
{
    /// <summary>All values, where they can be counted; otherwise empty.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];
}

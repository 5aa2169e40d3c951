namespace Advance.Sheets.Markup.Subset;

/// <summary>An attribute that an element can have.</summary>
/// <param name="Name">As written.</param>
/// <param name="Value">What it can be.</param>
/// <param name="Means">What it does, for the guide.</param>
internal sealed record AttributeRule(string Name, ValueRule Value, string Means)
{
    /// <summary>True where the element is nothing without it.</summary>
    public bool IsRequired { get; init; }
}

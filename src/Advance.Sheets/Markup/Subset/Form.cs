namespace Advance.Sheets.Markup.Subset;

/// <summary>An element of the subset. Several have the same name and differ by a word in their class.</summary>
/// <param name="Name">The element's name.</param>
/// <param name="Class">The word in its class that makes it what it is; null where no word is needed.</param>
/// <param name="Is">What it counts as where it stands.</param>
/// <param name="Holds">What can stand in it.</param>
internal sealed record Form(string Name, string? Class, Content Is, Content Holds)
{
    /// <summary>What it is for, for the guide.</summary>
    public required string Means { get; init; }

    /// <summary>The type of the document tree that it becomes, or that it is a part of.</summary>
    public required Type Gives { get; init; }

    /// <summary>A use of it as somebody would write it. Empty for a part, which is shown in the example of its whole.</summary>
    public string Example { get; init; } = "";

    /// <summary>What can be said about it. Attributes of a drawing's own come on top where <see cref="TakesMore"/> is true.</summary>
    public IReadOnlyList<AttributeRule> Attributes { get; init; } = [];

    /// <summary>Words for its class.</summary>
    public IReadOnlyList<ClassWord> Words { get; init; } = [];

    /// <summary>True where further <c>data-</c> attributes are looked at by whoever makes the drawing.</summary>
    public bool TakesMore { get; init; }

    /// <summary>Whether another can stand in it.</summary>
    public bool CanHold(Form other) => (Holds & other.Is) != Content.None;

    /// <summary>As a person would call it: <c>div class="columns"</c>.</summary>
    public string Title => Class is null ? Name : $"{Name} class=\"{Class}\"";
}

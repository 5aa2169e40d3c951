namespace Advance.Paper.Tree;

/// <summary>What a file says about itself. Nothing here is taken from the clock or the machine.</summary>
/// <param name="Title">Shown in the title bar of a reader.</param>
public sealed record DocumentInfo(string Title)
{
    /// <summary>Who made it; empty when unknown.</summary>
    public string Author { get; init; } = "";

    /// <summary>One line about the contents; may be empty.</summary>
    public string Subject { get; init; } = "";

    /// <summary>Words to be found by; may be empty.</summary>
    public string Keywords { get; init; } = "";

    /// <summary>The day of issue, which is also the date of creation that PDF and workbook carry. Null writes no date at all.</summary>
    public DateOnly? Issued { get; init; }

    /// <summary>Language of the text as an IETF tag. Default <c>en</c>.</summary>
    public string Language { get; init; } = "en";
}

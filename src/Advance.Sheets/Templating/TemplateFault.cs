using Advance.Domain.Facts;

namespace Advance.Sheets.Templating;

/// <summary>Something wrong with a template, or with the markup that it wrote.</summary>
/// <param name="At">The place in the template; its file is the template's name, line and column count from 1.</param>
/// <param name="Says">What is wrong, one sentence that stands alone.</param>
public sealed record TemplateFault(Mark At, string Says)
{
    /// <summary>What would put it right, such as the nearest known name; may be empty.</summary>
    public string Cure { get; init; } = "";

    /// <summary>For a fault in a partial the places that included it, innermost first; empty for a sheet's own.</summary>
    public IReadOnlyList<Mark> IncludedAt { get; init; } = [];

    /// <summary><c>sheets/day-sheet.html:12:7: what is wrong. What would put it right.</c></summary>
    public override string ToString() =>
        $"{At}: {Says}{(Cure.Length > 0 ? " " + Cure : "")}{(IncludedAt.Count > 0 ? $" (included at {IncludedAt[0]})" : "")}";
}

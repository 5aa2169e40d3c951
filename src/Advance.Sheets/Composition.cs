using Advance.Paper.Tree;

namespace Advance.Sheets;

/// <summary>A package before it is printed.</summary>
/// <param name="Document">The tree.</param>
/// <param name="Workbooks">Names of workbooks in the order of the package, and the sheets whose tables each holds.</param>
/// <param name="Views">The views that a sheet of the package is printed from, by the name of their template, in the order of the package.</param>
/// <param name="Titles">Of the sheets, in order.</param>
/// <param name="Faults">What is wrong with a template, or with what was asked for; nothing is printed where there are any.</param>
internal sealed record Composition(
    Document Document,
    IReadOnlyList<(string Name, Document Document)> Workbooks,
    IReadOnlyList<(string Template, object View)> Views,
    IReadOnlyList<string> Titles,
    IReadOnlyList<string> Faults);

using Advance.Sheets.Templating;

namespace Advance.Sheets.Markup;

/// <summary>What was read from one template's output.</summary>
/// <param name="Sheets">In order. Where there are faults, what could be read in spite of them; not for printing.</param>
/// <param name="Faults">Of the template in the order found, then of its markup in the order of their places.</param>
public sealed record SheetsRead(IReadOnlyList<MarkedUpSheet> Sheets, IReadOnlyList<TemplateFault> Faults);

using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>A template that was read once and can be run often.</summary>
/// <param name="Source">As it was written.</param>
/// <param name="Page">What is run; not used where there are faults.</param>
/// <param name="Faults">What is wrong with how it is written.</param>
internal sealed record ParsedTemplate(SourceText Source, ScriptPage? Page, IReadOnlyList<TemplateFault> Faults);

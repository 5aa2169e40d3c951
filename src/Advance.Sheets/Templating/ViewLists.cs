using System.Collections;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>Shows the lists of views to templates, to be read and not to be written to.</summary>
internal sealed class ViewLists : IListAccessor
{
    public static readonly ViewLists It = new();

    private ViewLists()
    {
    }

    public int GetLength(TemplateContext context, SourceSpan span, object target) => ((IList)target).Count;

    public object? GetValue(TemplateContext context, SourceSpan span, object target, int index) => ((IList)target)[index];

    public void SetValue(TemplateContext context, SourceSpan span, object target, int index, object? value) =>
        throw new ScriptRuntimeException(span, "A template cannot change what it prints.");
}

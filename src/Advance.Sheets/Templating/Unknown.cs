using System.Collections;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>
/// Stands for the value of a name that is not known, after the fault was noted. It is false, empty, prints nothing, can be called, and each of
/// its members is unknown too, so that a template runs on and all its unknown names are found in one run.
/// </summary>
internal sealed class Unknown : IScriptCustomFunction, IScriptCustomBinaryOperation, IEnumerable
{
    public static readonly Unknown It = new();

    private Unknown()
    {
    }

    public int RequiredParameterCount => 0;

    public int ParameterCount => 0;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.Direct;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(object), "");

    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) => It;

    public ValueTask<object?> InvokeAsync(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement) => new(It);

    public bool TryEvaluate(
        TemplateContext context,
        SourceSpan span,
        ScriptBinaryOperator op,
        SourceSpan leftSpan,
        object? leftValue,
        SourceSpan rightSpan,
        object? rightValue,
        out object? result)
    {
        result = It;
        return true;
    }

    public IEnumerator GetEnumerator() => Array.Empty<object>().GetEnumerator();
}

using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>A function that templates may call. What it needs to be told is converted by the engine before it is called.</summary>
/// <param name="name">With its group, such as <c>string.upcase</c>.</param>
/// <param name="does">Makes the result of what was given.</param>
internal sealed class TemplateFunction(string name, Func<TemplateScope, ScriptArray, object?> does) : IScriptCustomFunction
{
    /// <summary>With its group, if it has one.</summary>
    public string Name { get; } = name;

    /// <summary>What it has to be given, in order; <c>string</c> and <c>int</c> are converted, <c>object</c> is taken as it is.</summary>
    public required IReadOnlyList<Type> Takes { get; init; }

    /// <summary>What it does, for the template guide.</summary>
    public required string Means { get; init; }

    /// <summary>A use of it, without the braces.</summary>
    public required string Example { get; init; }

    /// <summary>What the example prints.</summary>
    public required string Prints { get; init; }

    /// <summary>True for named parameters of any name, which come as members of the array.</summary>
    public bool TakesNamed { get; init; }

    /// <summary>True where it prints by itself and has no value to work with.</summary>
    public bool IsStatement { get; init; }

    /// <inheritdoc/>
    public int RequiredParameterCount => Takes.Count;

    /// <inheritdoc/>
    public int ParameterCount => Takes.Count;

    /// <inheritdoc/>
    public ScriptVarParamKind VarParamKind => TakesNamed ? ScriptVarParamKind.Direct : ScriptVarParamKind.None;

    /// <inheritdoc/>
    public Type ReturnType => IsStatement ? typeof(void) : typeof(object);

    /// <inheritdoc/>
    // No name is an empty one, so no named parameter is ever taken for one that has its place.
    public ScriptParameterInfo GetParameterInfo(int index) => new(index < Takes.Count ? Takes[index] : typeof(object), "");

    /// <inheritdoc/>
    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        does((TemplateScope)context, arguments);

    /// <inheritdoc/>
    public ValueTask<object?> InvokeAsync(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement) => new(does((TemplateScope)context, arguments));
}

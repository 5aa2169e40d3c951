using System.Collections;
using Advance.Sheets.Views;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Runtime.Accessors;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>
/// Runs one template at a time: escapes what it prints, finds members of views, counts steps. A partial runs in a scope of its own, so that
/// it sees the view and what it is given, and nothing that its caller happened to name.
/// </summary>
internal sealed class TemplateScope : TemplateContext
{
    private readonly RenderRun run;
    private readonly ScriptObject view;
    private ScriptObject given = [];
    private ScriptObject own = [];
    private SourceSpan printed;

    public TemplateScope(RenderRun run, ScriptObject view)
        : base(TemplateFunctions.Globals)
    {
        this.run = run;
        this.view = view;
        AutoIndent = false;
        NewLine = "\n";
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedIndexerAccess = false;
        ErrorForStatementFunctionAsExpression = true;
        LimitToString = run.Limits.Text;
        OnStringLimit = ScriptLimitBehavior.Throw;
        // The output counts for itself, for all scopes together.
        OutputLimit = 0;
        // Rounds are counted for all loops together; this is for loops inside the engine's own operators, and comes second.
        LoopLimit = run.Limits.Rounds + 1;
        TryGetVariable = FindVariable;
        TryGetMember = FindMember;
        PushOutput(run.Output);
        PushGlobal(view);
    }

    public RenderRun Run => run;

    /// <summary>Runs a template with what it was given, which it sees by name and, where it may be missing, as a member of <c>given</c>.</summary>
    public void Print(ScriptNode page, ScriptObject parameters)
    {
        given = parameters;
        own = [];
        given.SetValue("given", new GivenParameters(parameters), readOnly: true);
        PushGlobal(given);
        PushGlobal(own);
        Evaluate(page, aliasReturnedFunction: false);
        PopGlobal();
        PopGlobal();
    }

    public override object? Evaluate(ScriptNode? scriptNode, bool aliasReturnedFunction)
    {
        run.CountStep();
        var value = base.Evaluate(scriptNode, aliasReturnedFunction);
        return scriptNode switch
        {
            // A value becomes markup here and not in Write, which is told the place of the whole block and not that of the expression.
            ScriptExpressionStatement { CanOutput: true } statement when value is not null => Printed(statement.Span, value),
            ScriptInterpolatedExpression part when value is not null => Said(part.Span, value),
            not null when value is string text && text.Length > run.Limits.Text => throw new ScriptRuntimeException(scriptNode.Span, TooLong),
            _ => value,
        };
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject) =>
        At(printed, () => Write(textAsObject is TrustedMarkup markup ? markup.Xhtml : Escaping.Escape(ObjectToString(textAsObject) ?? "")));

    public override string? ObjectToString(object? value, bool nested = false) => value switch
    {
        null or Unknown => null,
        Cell or TrustedMarkup => throw new StoppedException(
            "A cell is more than its words and can only be printed by itself; where the words alone are meant, add `.text`."),
        IScriptObject and not IList => throw new StoppedException("This cannot be printed, only its members can."),
        double number when !double.IsFinite(number) => throw new StoppedException("This is no finite number, so it cannot be printed."),
        string or IFormattable => base.ObjectToString(value, nested),
        IEnumerable => throw new StoppedException("A list cannot be printed; loop over it."),
        IConvertible => base.ObjectToString(value, nested),
        _ => throw new StoppedException(
            $"This cannot be printed, only its members can: {string.Join(", ", GetMemberAccessor(value).GetMembers(this, CurrentSpan, value))}."),
    };

    /// <summary>What would print nothing is false, and so is an empty list; a zero is true, because it prints.</summary>
    public override bool ToBool(SourceSpan span, object? value) => value switch
    {
        Unknown => false,
        string text => text.Length > 0,
        Cell cell => !cell.IsBlank,
        IList list => list.Count > 0,
        _ => base.ToBool(span, value),
    };

    protected override IObjectAccessor? GetMemberAccessorImpl(object target) => target switch
    {
        IScriptObject or string or IList or IConvertible => base.GetMemberAccessorImpl(target),
        GivenParameters or Unknown => NullAccessor.Default,
        _ => ViewMembers.Of(target.GetType()),
    };

    protected override IListAccessor? GetListAccessorImpl(object target, Type type) =>
        target is IList and not ScriptArray ? ViewLists.It : base.GetListAccessorImpl(target, type);

    protected override bool OnStepLoop(ScriptLoopStatementBase loop)
    {
        run.CountRound();
        return true;
    }

    private string TooLong => $"The template was stopped: a text grew longer than {run.Limits.Text} characters.";

    private static T At<T>(SourceSpan span, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (StoppedException stop)
        {
            throw new ScriptRuntimeException(span, stop.Message, stop);
        }
    }

    private string? Said(SourceSpan span, object value) => At(span, () => ObjectToString(value));

    private TrustedMarkup Printed(SourceSpan span, object value)
    {
        printed = span;
        run.Output.ExpressionAt = span.Start.Offset;
        return At(span, () => value switch
        {
            TrustedMarkup markup => markup,
            Cell cell => CellMarkup.Of(cell),
            bool => throw new StoppedException("A yes or no cannot be printed; write the words in an `if`."),
            _ => new TrustedMarkup(Escaping.Escape(ObjectToString(value) ?? "")),
        });
    }

    private bool FindVariable(TemplateContext context, SourceSpan span, ScriptVariable variable, out object? value)
    {
        value = Unknown.It;
        string[] known = [.. view.Keys, .. given.Keys, .. own.Keys, .. TemplateFunctions.Globals.Keys];
        run.NoteUnknown(span, variable.Name, LeftOut.Why(variable.Name) ?? NearestName.Cure(variable.Name, known));
        return true;
    }

    private bool FindMember(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        if (target is GivenParameters parameters)
        {
            value = parameters.Find(member);
            return true;
        }

        value = Unknown.It;
        if (target is not Unknown)
        {
            var why = target is ScriptObject ? LeftOut.Why(member) : null;
            run.NoteUnknown(span, member, why ?? NearestName.Cure(member, [.. GetMemberAccessor(target).GetMembers(this, span, target)]));
        }

        return true;
    }
}

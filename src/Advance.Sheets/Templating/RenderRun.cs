using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>One sheet being written: what its template and all partials in it share.</summary>
internal sealed class RenderRun
{
    private readonly TemplateEngine engine;
    private readonly ScriptObject view;
    private readonly List<TemplateScope> scopes = [];
    private int depth;
    private long steps;
    private int rounds;
    private bool isStopped;

    public RenderRun(TemplateEngine engine, ScriptObject view, Frame start)
    {
        this.engine = engine;
        this.view = view;
        Output = new MappedOutput(start, engine.Limits.Output);
    }

    public TemplateLimits Limits => engine.Limits;

    public MappedOutput Output { get; }

    public FaultList Faults { get; } = new();

    /// <summary>False once a part is missing from the output.</summary>
    public bool IsWhole { get; private set; } = true;


    /// <summary>Runs the sheet's own template.</summary>
    public void Print(ParsedTemplate template)
    {
        try
        {
            Run(template, []);
        }
        catch (ScriptRuntimeException)
        {
            // Noted where it came up, in the frame that it came up in.
        }
    }

    /// <summary>Runs a partial where its caller stands. One that cannot be read is a fault, and the caller goes on without it.</summary>
    public void Include(string name, SourceSpan at, ScriptObject given)
    {
        if (engine.Find(name) is not { } template)
        {
            Lack(at, IncludeFunction.Unknown(name), NearestName.Cure(name, engine.Library.Names));
            return;
        }

        if (template.Faults.Count > 0)
        {
            template.Faults.ToList().ForEach(Faults.Add);
            IsWhole = false;
            return;
        }

        if (depth == Limits.Depth)
        {
            throw new StoppedException($"The template was stopped: its partials include each other more than {Limits.Depth} deep.");
        }

        var caller = Output.Frame;
        Output.Frame = new Frame(template.Source, caller, at.Start.Offset);
        Run(template, given);
        Output.Frame = caller;
    }

    public void NoteUnknown(SourceSpan at, string name, string cure) =>
        Faults.Add(Output.Frame, at.Start.Offset, $"There is no `{name}` here.", cure, at.Length);

    public void CountStep()
    {
        if (++steps > Limits.Steps)
        {
            throw new StoppedException($"The template was stopped: it runs on after {Limits.Steps} steps.");
        }
    }

    public void CountRound()
    {
        if (++rounds > Limits.Rounds)
        {
            throw new StoppedException($"The template was stopped: its loops go on after {Limits.Rounds} rounds.");
        }
    }

    private void Run(ParsedTemplate template, ScriptObject given)
    {
        if (scopes.Count == depth)
        {
            scopes.Add(new TemplateScope(this, view));
        }

        var scope = scopes[depth++];
        try
        {
            scope.Print(template.Page!, given);
        }
        catch (ScriptRuntimeException stop) when (!isStopped)
        {
            isStopped = true;
            Lack(stop.Span, Sentence.Of(stop.OriginalMessage), "");
            throw;
        }

        depth--;
    }

    private void Lack(SourceSpan at, string says, string cure)
    {
        Faults.Add(Output.Frame, at.Start.Offset, says, cure, at.Length);
        IsWhole = false;
    }
}

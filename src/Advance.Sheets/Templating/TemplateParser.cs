using Scriban;
using Scriban.Parsing;
using Scriban.Syntax;

namespace Advance.Sheets.Templating;

/// <summary>Reads templates, and looks for what can be told to be wrong before they run: also in a branch that this gig does not take.</summary>
/// <param name="library">The partials that an include may name.</param>
internal sealed class TemplateParser(TemplateLibrary library)
{
    public ParsedTemplate Parse(SourceText source)
    {
        var frame = new Frame(source);
        var faults = new FaultList();
        var template = Template.Parse(source.Text, source.Name);
        foreach (var message in template.Messages.Where(message => message.Type == ParserMessageType.Error))
        {
            faults.Add(frame, message.Span.Start.Offset, Sentence.Of(message.Message), length: message.Span.Length);
        }

        if (!template.HasErrors)
        {
            Look(template.Page, frame, faults);
        }

        return new(source, template.Page, faults.All);
    }

    private void Look(ScriptNode? page, Frame frame, FaultList faults)
    {
        // A list of nodes to visit and no recursion: a template may nest deeper than the stack allows.
        var open = new Stack<ScriptNode?>([page]);
        while (open.TryPop(out var node))
        {
            switch (node)
            {
                case ScriptCaptureStatement or ScriptWrapStatement or ScriptTableRowStatement:
                    faults.Add(
                        frame,
                        node.Span.Start.Offset,
                        "A template cannot capture, wrap or make table rows by statement: the place of what is written would be lost.",
                        "Write a partial and include it.");
                    break;
                case ScriptFunctionCall { Target: ScriptVariable { Name: IncludeFunction.Name } } call:
                    LookAtInclude(call, frame, faults);
                    break;
            }

            for (var i = (node?.ChildrenCount ?? 0) - 1; i >= 0; i--)
            {
                open.Push(node!.GetChildren(i));
            }
        }
    }

    private void LookAtInclude(ScriptFunctionCall call, Frame frame, FaultList faults)
    {
        if (call.Arguments.Count > 0 && call.Arguments[0] is ScriptLiteral { Value: string name } literal && !library.Has(name))
        {
            var cure = NearestName.Cure(name, library.Names);
            faults.Add(frame, literal.Span.Start.Offset, IncludeFunction.Unknown(name), cure, literal.Span.Length);
        }
    }
}

using System.Text;
using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Domain.Wording;

/// <summary>A working as a short derivation: formula, inputs with where they come from, result, source; then the workings of its inputs.</summary>
public sealed class WorkingText
{
    // A chain of workings deeper than this is cut; the last step says so.
    private const int Deepest = 8;

    private readonly StringBuilder text = new();
    private readonly HashSet<Working> told = new(ReferenceEqualityComparer.Instance);

    private WorkingText()
    {
    }

    /// <summary>The derivation, line by line, with a line end after each.</summary>
    public static string Of(Working working)
    {
        var derivation = new WorkingText();
        derivation.Tell(working, 0);
        return derivation.text.ToString();
    }

    /// <summary>Where a value came from that has no working.</summary>
    public static string Of(Reason why) => why switch
    {
        Reason.Fixed { At: { IsSomewhere: true } at, How: var how } => $"{at}{Known(how)}",
        Reason.Fixed => "written",
        Reason.Policy policy => $"policy {policy.Name}",
        _ => "counted",
    };

    private void Tell(Working working, int deep)
    {
        told.Add(working);
        var indent = new string(' ', 2 * deep);
        text.Append($"{indent}{working.Name}: {working.Formula}\n");
        foreach (var input in working.Inputs)
        {
            text.Append($"{indent}  {input.Symbol} = {Value(input.Value, Precisely.SayInput)}, {From(input, deep)}{Open(input.RestsOn)}\n");
        }

        text.Append($"{indent}  gives {Value(working.Result, Precisely.Say)}; {working.Source}\n");
        foreach (var part in working.Inputs.SelectMany(Parts).Where(part => deep < Deepest && !told.Contains(part)))
        {
            Tell(part, deep + 1);
        }
    }

    private string From(Input input, int deep)
    {
        if (Parts(input).Any())
        {
            return Parts(input).All(told.Contains) ? "worked out above" : deep < Deepest ? "worked out below" : "worked out";
        }

        return input is { Why: Reason.Derived, Value: not int } ? "worked out" : Of(input.Why);
    }

    private static IEnumerable<Working> Parts(Input input) => input.How is { } how ? [how] : input.Parts;

    private static string Value(object? value, Func<object, string> say) => value is null ? "unknown" : say(value);

    private static string Open(Doubts doubts) => doubts.Any ? $" TBC: {string.Join("; ", doubts.Select(Question))}" : "";

    private static string Question(Doubt doubt) => doubt.Who is { } who ? $"{doubt.Subject} ({who})" : doubt.Subject;

    private static string Known(Known how) => how switch
    {
        Facts.Known.Weighed => ", weighed or measured",
        Facts.Known.Maker => ", maker's figure",
        Facts.Known.Estimated => ", estimated",
        _ => "",
    };
}

using Advance.Domain.Figures;
using Advance.Domain.Wording;

namespace Advance.Tests.Workings;

/// <summary>Checks a working by hand: its printed formula, put in with its printed inputs, must give its printed result.</summary>
internal static class ByHand
{
    private const double Slack = 1e-9;

    /// <summary>What is wrong with it; null where it holds.</summary>
    public static string? Fault(Working working)
    {
        if (working.Inputs.Any(input => input.Value is null) || working.Result is null)
        {
            // Nothing to put in; but then nothing may have come out either.
            return working.Result is null && working.Inputs.Any(input => input.Value is null) ? null : Tell(working, "a result without its inputs, or the other way round");
        }

        try
        {
            return Compare(working);
        }
        catch (FormulaFault fault)
        {
            return Tell(working, fault.Message);
        }
    }

    /// <summary>All workings behind one, itself first, each once.</summary>
    public static IEnumerable<Working> Behind(IEnumerable<Working> workings)
    {
        var seen = new HashSet<Working>(ReferenceEqualityComparer.Instance);
        var open = new Stack<Working>(workings.Reverse());
        while (open.TryPop(out var working))
        {
            if (!seen.Add(working))
            {
                continue;
            }

            yield return working;
            foreach (var input in working.Inputs.SelectMany(input => input.Parts.Append(input.How)).OfType<Working>())
            {
                open.Push(input);
            }
        }
    }

    private static string? Compare(Working working)
    {
        var inputs = working.Inputs.ToDictionary(input => input.Symbol, Value, StringComparer.Ordinal);
        var byHand = Evaluator.Evaluate(working.Formula, inputs);
        var printed = Printed.Read(Precisely.Say(working.Result!)).Single();
        var allowed = (working.Result is int ? 0 : printed.HalfUnit(Precisely.ResultDigits)) + Rounding(working, inputs, byHand) + Slack;
        return Math.Abs(byHand - printed.Value) <= allowed ? null : Tell(working, $"by hand {byHand}");
    }

    private static Amounts Value(Input input) => Terms(input, printed => printed.Value);

    // A list of one term prints like a number, and a list of none as 0.
    private static Amounts Terms(Input input, Func<Printed, double> of)
    {
        var terms = Printed.Read(Precisely.SayInput(input.Value!)).Select(of);
        return input.Value is ITerms ? Amounts.List(terms) : Amounts.One(terms.Single());
    }

    // How far inputs that needed all their digits can move the result: a thousandth of its own last place, as a rule.
    private static double Rounding(Working working, Dictionary<string, Amounts> inputs, double byHand)
    {
        var moved = 0.0;
        foreach (var input in working.Inputs.Where(input => input.Value is not int))
        {
            var rounding = Terms(input, printed => printed.Rounding(Precisely.InputDigits));
            var other = new Dictionary<string, Amounts>(inputs, StringComparer.Ordinal) { [input.Symbol] = inputs[input.Symbol].With(rounding, (a, b) => a + b) };
            moved += Math.Abs(Evaluator.Evaluate(working.Formula, other) - byHand);
        }

        return moved;
    }

    private static string Tell(Working working, string what)
    {
        var inputs = working.Inputs.Select(input => $"{input.Symbol} = {(input.Value is null ? "unknown" : Precisely.SayInput(input.Value))}");
        return $"{working.Name}: {working.Formula}; {string.Join(", ", inputs)}; printed {(working.Result is null ? "unknown" : Precisely.Say(working.Result))}; {what}";
    }
}

using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Says what was put into a formula; of a load that was itself worked out, and has no row of its own, also what was put into that.</summary>
internal sealed class WorkingInputs
{
    // A line does not break within a value.
    private const char Hard = '\u00A0';

    private const int MostTerms = 12;
    private const int MostParts = 6;

    // From a ratio down to the gust, and to the faces that it finds.
    private const int Deepest = 2;

    // A moment is checked load by load, and a truss has dozens.
    private const int MostLoads = 60;

    private readonly Cells cells;
    private readonly HashSet<string> stated;

    /// <param name="cells">For the open questions.</param>
    /// <param name="figures">All that have a row.</param>
    public WorkingInputs(Cells cells, IEnumerable<Stated> figures) =>
        (this.cells, stated) = (cells, figures.Select(figure => Key(figure.How!)).ToHashSet(StringComparer.Ordinal));

    /// <summary>Each input of a figure.</summary>
    public IEnumerable<WorkingsView.Put> Of(Stated figure) =>
        from input in figure.How!.Inputs
        let tbc = cells.NoteOf(input.RestsOn) is null ? null : ""
        select new WorkingsView.Put(Cell.Of($"{Said(input, figure)}{From(input)}") with { Tbc = tbc }, Cell.Of(Told(input, figure, Deepest)) with { Tbc = tbc });

    /// <summary>The formulas behind, each with what its symbols stand for.</summary>
    public IEnumerable<string> Behind(IEnumerable<Stated> figures) =>
        figures.SelectMany(figure => figure.How!.Inputs.SelectMany(input => Behind(input, figure, Deepest))).Distinct(StringComparer.Ordinal);

    private IEnumerable<string> Behind(Input input, Stated figure, int deep) => Inner(input, figure, deep) is not { } inner ? []
        : [Named(input.Symbol, inner.Formula), .. inner.Inputs.SelectMany(part => Behind(part, figure, deep - 1))];

    // "F = min(k · m, f)" where F is put in, though it is worked out under another letter.
    private static string Named(string symbol, string formula)
    {
        var named = $"{symbol} = {formula[(formula.IndexOf(" = ", StringComparison.Ordinal) + 3)..]}";
        return FormulaWords.Of(formula) is { Length: > 0 } words ? $"{named}, {words}" : named;
    }

    private static string Said(Input input, Stated figure) => $"{input.Symbol}{Hard}={Hard}{Value(input, IsOfLoads(figure) ? MostLoads : MostTerms)}";

    private string Told(Input input, Stated figure, int deep) => Inner(input, figure, deep) is { } inner
        ? $"({string.Join("; ", inner.Inputs.Select(part => $"{Said(part, figure)}{From(part)}{(Told(part, figure, deep - 1) is { Length: > 0 } behind ? $" {behind}" : "")}"))})"
        : Parts(input);

    // Of the ways of currents each has its lead for itself; those are told by their parts.
    private Working? Inner(Input input, Stated figure, int deep) =>
        deep > 0 && IsOfLoads(figure) && input.How is { } how && !stated.Contains(Key(how)) && !IsSum(how) ? how : null;

    private static bool IsOfLoads(Stated figure) => figure.Address.Text.Split('/')[0] is "rigging" or "stack";

    // Some are worked out more than once, from the same.
    private static string Key(Working how) => string.Join('\n', [how.Formula, Exactly(how.Result), .. how.Inputs.Select(input => Exactly(input.Value))]);

    private static string Exactly(object? value) => value is null ? "unknown" : Precisely.SayInput(value);

    private static bool IsSum(Working how) => how.Inputs is [{ Parts.Count: > 1 }];

    private static string Value(Input input, int most) => input.Value switch
    {
        null => "unknown",
        ITerms terms when !terms.Objects.Any() => "0",
        ITerms terms => Terms([.. terms.Objects.Select(Unbroken)], most),
        var value => Unbroken(value),
    };

    private static string Unbroken(object value) => Precisely.Say(value).Replace(' ', Hard);

    // Like terms that follow each other are counted: "4 × 1.7 A, 2.2 A".
    private static string Terms(List<string> said, int most)
    {
        var runs = new List<(string Said, int Count)>();
        foreach (var term in said)
        {
            var isLike = runs.Count > 0 && runs[^1].Said == term;
            if (isLike)
            {
                runs[^1] = (term, runs[^1].Count + 1);
            }
            else
            {
                runs.Add((term, 1));
            }
        }

        var shown = string.Join(", ", runs.Take(most).Select(run => run.Count > 1 ? $"{run.Count}{Hard}×{Hard}{run.Said}" : run.Said));
        return runs.Count > most ? $"{shown}, … ({said.Count} in all)" : shown;
    }

    // The drop on each lead of a way.
    private string Parts(Input input)
    {
        var parts = input.How is { } how && !stated.Contains(Key(how)) && IsSum(how) ? how.Inputs[0].Parts : [];
        var alike = parts.GroupBy(part => $"{part.Name} {(part.Result is { } result ? Precisely.Say(result) : "unknown")}", StringComparer.Ordinal)
            .Select(some => some.Count() > 1 ? $"{some.Count()} × {some.Key}" : some.Key).ToList();
        var more = alike.Count > MostParts ? $"; … ({parts.Count} in all)" : "";
        return parts.Count == 0 ? "" : $"({string.Join("; ", alike.Take(MostParts))}{more})";
    }

    private static string From(Input input) => input.Why switch
    {
        _ when input.How is not null || input.Parts.Count > 0 => "",
        Reason.Fixed or Reason.Policy => $" ({WorkingText.Of(input.Why)})",
        _ => "",
    };
}

namespace Advance.Sheets.Views;

/// <summary>Rows of workings that say the same, said once.</summary>
internal static class WorkingRows
{
    // What an address says between a thing and the number of its part, and paper does not.
    private static readonly string[] Between = ["box", "hole", "outlet", "pick", "whole"];

    private static readonly char[] Breaks = [' ', '/', '-', ','];

    /// <summary>
    /// Figures into which the same was put and that come out the same are one row, which names them all: first those with the same remark, then
    /// remarks of the same. What rests on an open question stands alone, since it may come out otherwise by itself; so does a figure of no one thing.
    /// </summary>
    public static List<WorkingsView.Line> Folded(IReadOnlyList<WorkingsView.Line> lines) =>
    [
        .. from row in lines.GroupBy(line => Key(line, line.Remark.Text)).Select(Named)
           group row by Key(row, row.Of.Text) into some
           select some.First() with { Remark = Cell.Of(string.Join("; ", some.Select(row => row.Remark.Text))) },
    ];

    /// <summary>What is put in alike in every row of several; no more where it may come out otherwise.</summary>
    public static IReadOnlyList<WorkingsView.Put> InEach(IReadOnlyList<WorkingsView.Line> rows) => rows.Count < 2 ? []
        : [.. rows[0].Inputs.Where(put => put.Said.Tbc is null && rows.All(row => row.Inputs.Contains(put)))];

    /// <summary>Rows without what is put in alike in each, and of the rest what is behind a value the first time only.</summary>
    public static List<WorkingsView.Line> Without(IReadOnlyList<WorkingsView.Put> alike, IEnumerable<WorkingsView.Line> rows)
    {
        var told = new HashSet<WorkingsView.Put>();
        return [.. rows.Select(row => row with { Inputs = [.. row.Inputs.Except(alike).Select(put => told.Add(put) ? put : put with { Behind = put.Behind with { Text = "" } })] })];
    }

    /// <summary>Whether what stands in a row tells what its address has of its own: <c>T1/pick/1</c> is T1-1, <c>PD1/2</c> is PD1 outlet 2.</summary>
    public static bool IsTold(string own, string row) => $" {Words(row)} ".Contains($" {Words(own)} ", StringComparison.Ordinal);

    /// <summary>Groups that put the same into the same formula, row by row, said once under both headings; not where that may come out otherwise.</summary>
    public static IEnumerable<WorkingsView.Group> Merged(IEnumerable<WorkingsView.Group> groups) =>
        groups.GroupBy(Key).Select(some => some.First() with
        {
            Kind = Cell.Of(string.Join("; ", some.Select((group, at) => at == 0 ? group.Kind.Text : char.ToLowerInvariant(group.Kind.Text[0]) + group.Kind.Text[1..]))),
            SharedAddress = Cell.Of(string.Join(", ", some.Select(group => group.SharedAddress.Text))),
        });

    private static string Key(WorkingsView.Group group) => string.Join('\n', [group.Formula.Text, group.Source.Text, group.Symbols.Text,
        .. group.InEach.Select(put => $"{put.Said.Text} {put.Behind.Text}"), .. group.Lines.Select(line => $"{Key(line, line.Of.Text)} {line.Remark.Text} {line.OwnAddress.Text}{(group.SharedAddress.IsBlank ? line.Address.Text : "")}")]);

    private static WorkingsView.Line Named(IEnumerable<WorkingsView.Line> lines)
    {
        List<WorkingsView.Line> all = [.. lines];
        return all.Count < 2 ? all[0] : all[0] with
        {
            Of = Cell.Of(NameList.Say(all.Select(line => line.Of.Text))),
            OwnAddress = all[0].OwnAddress.IsBlank ? Cell.Blank : Cell.Of($"{all[0].OwnAddress.Text} and its like"),
        };
    }

    private static string Key(WorkingsView.Line line, string with) =>
        string.Join('\n', [with, line.Of.IsBlank || line.Result.Tbc is not null || line.Inputs.Any(input => input.Said.Tbc is not null) ? line.Address.Text : "", line.Result.Text, .. line.Inputs.Select(input => $"{input.Said.Text} {input.Behind.Text}")]);

    private static string Words(string text) => string.Join(' ', text.Split(Breaks, StringSplitOptions.RemoveEmptyEntries).Where(word => !Between.Contains(word, StringComparer.Ordinal)));
}

namespace Advance.Sheets.Views;

/// <summary>The card in the lid of one stage box, sorted by port.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Box">Its name.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Acts">Their names, in running order; a column each.</param>
/// <param name="Inputs">Every port, free ones in a row as one line.</param>
/// <param name="Outputs">Every port, free ones in a row as one line.</param>
/// <param name="RestsOn">The open questions that may move a line.</param>
public sealed record StageBoxCardView(
    string Id, string Box, Cell Place, IReadOnlyList<string> Acts, IReadOnlyList<StageBoxCardView.Line> Inputs, IReadOnlyList<StageBoxCardView.Line> Outputs, Cell RestsOn)
{
    /// <summary>Whether one column names what is on a port: with more than one act each has its own.</summary>
    public bool IsNarrow => Acts.Count <= 1;

    /// <summary>Whether any input has something on it for every act.</summary>
    public bool HasHouseInputs => Inputs.Any(line => !line.House.IsBlank);

    /// <summary>Whether any lead of an input bears another name than its port.</summary>
    public bool HasInputLeads => Inputs.Any(line => !line.Lead.IsBlank);

    /// <summary>Whether any output has something on it for every act.</summary>
    public bool HasHouseOutputs => Outputs.Any(line => !line.House.IsBlank);

    /// <summary>The inputs in two blocks that stand side by side.</summary>
    public IReadOnlyList<IReadOnlyList<Line>> InputBlocks => Blocks(Inputs);

    /// <summary>The outputs in two blocks that stand side by side.</summary>
    public IReadOnlyList<IReadOnlyList<Line>> OutputBlocks => Blocks(Outputs);

    /// <summary>One port.</summary>
    /// <param name="Port">Its number, or those of several free ones.</param>
    /// <param name="House">What is on it for every act; blank for nothing.</param>
    /// <param name="Acts">What each act has on it.</param>
    /// <param name="Lead">Label of the lead.</param>
    /// <param name="Phantom">Whether 48 V is on.</param>
    public sealed record Line(Cell Port, Cell House, IReadOnlyList<Cell> Acts, Cell Lead, Cell Phantom)
    {
        /// <summary>What is on it where there is one act at most.</summary>
        public Cell Only => House.IsBlank && Acts.Count > 0 ? Acts[0] : House;

        /// <summary>Whether nothing is on it.</summary>
        public bool IsFree => House.Text == "free";
    }

    private static IReadOnlyList<IReadOnlyList<Line>> Blocks(IReadOnlyList<Line> lines)
    {
        var first = (lines.Count + 1) / 2;
        return lines.Count > 1 ? [[.. lines.Take(first)], [.. lines.Skip(first)]] : [lines];
    }
}

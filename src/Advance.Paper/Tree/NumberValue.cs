namespace Advance.Paper.Tree;

/// <summary>A number.</summary>
/// <param name="Amount">Finite; others are written as text.</param>
/// <param name="Unit">Its unit when it is not that of the column; empty for none.</param>
public sealed record NumberValue(double Amount, string Unit = "") : MachineValue
{
    /// <summary>Digits after the decimal sign in the workbook, 0 to 9. Default as many as there are.</summary>
    public int? Decimals { get; init; }
}

namespace Advance.Paper.Tree;

/// <summary>The sum of the numbers above in the same column, as a total has it: the workbook sums by itself.</summary>
/// <param name="Amount">The sum as worked out here, for whoever does not work out formulas.</param>
/// <param name="Unit">Its unit when it is not that of the column; empty for none.</param>
public sealed record SumValue(double Amount, string Unit = "") : MachineValue;

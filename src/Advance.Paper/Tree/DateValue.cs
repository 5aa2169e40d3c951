namespace Advance.Paper.Tree;

/// <summary>A day.</summary>
/// <param name="Day">The local day at the place of the event.</param>
public sealed record DateValue(DateOnly Day) : MachineValue;

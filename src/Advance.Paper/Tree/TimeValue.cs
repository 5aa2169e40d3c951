namespace Advance.Paper.Tree;

/// <summary>A time of day.</summary>
/// <param name="Time">Local time at the place of the event.</param>
public sealed record TimeValue(TimeOnly Time) : MachineValue;

namespace Advance.Paper.Tree;

/// <summary>A day and a time.</summary>
/// <param name="At">Local time at the place of the event, without a zone.</param>
public sealed record MomentValue(DateTime At) : MachineValue;

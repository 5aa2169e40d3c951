namespace Advance.Planning;

/// <summary>What goes into the vehicle next.</summary>
/// <param name="Unit">A case, or loose pieces of one kind.</param>
/// <param name="For">What it is needed for first.</param>
/// <param name="Task">The task that it is needed for first; null where none asks for it.</param>
public sealed record LoadRow(TravellingUnit Unit, Job For, CrewTask? Task);

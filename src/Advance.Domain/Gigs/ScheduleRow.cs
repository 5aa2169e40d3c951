using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>One line of the day.</summary>
/// <param name="Day">Name of the day it belongs to; null for the show day.</param>
/// <param name="Time">When.</param>
/// <param name="What">As written, without the word HOLD.</param>
/// <param name="Who">Who does it, or must sign a hold.</param>
/// <param name="Where">Where; empty where not said.</param>
/// <param name="IsHold">Nothing goes on until somebody has signed.</param>
/// <param name="At">Where it was written.</param>
public sealed record ScheduleRow(string? Day, Given<Moment> Time, string What, Given<string>? Who, string Where, bool IsHold, Mark At);

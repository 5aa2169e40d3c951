using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Something that is set and is no number, and why it is set so.</summary>
/// <typeparam name="T">A choice of a few.</typeparam>
/// <param name="Value">As set.</param>
/// <param name="Why">Written, policy or worked out.</param>
/// <param name="RestsOn">The open questions behind it.</param>
public sealed record Setting<T>(T Value, Reason Why, Doubts RestsOn)
    where T : struct;

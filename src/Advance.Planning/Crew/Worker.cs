using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>Somebody who can be given work.</summary>
/// <param name="Name">As printed; hands that have no names yet are numbered.</param>
/// <param name="Skills">What they can do; empty for a hand.</param>
/// <param name="Call">When they start.</param>
public sealed record Worker(string Name, IReadOnlyList<string> Skills, Moment Call);

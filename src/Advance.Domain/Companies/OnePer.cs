namespace Advance.Domain.Companies;

/// <summary>One for so many, begun: <c>1 per 8 over 3</c>.</summary>
/// <param name="Each">How many one is for, at least 1.</param>
/// <param name="Over">None where no more than so many are there; 0 or more.</param>
public readonly record struct OnePer(int Each, int Over = 0);

namespace Advance.Domain.Companies;

/// <summary>A share with a floor: <c>10 % at least 1</c>.</summary>
/// <param name="Percent">0 to 1,000.</param>
/// <param name="AtLeast">Pieces, 0 or more.</param>
public readonly record struct Share(double Percent, int AtLeast);

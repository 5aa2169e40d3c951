namespace Advance.Domain.Stocks;

/// <summary>What lets one box stand on, or hang from, another.</summary>
/// <param name="Below">Face of the lower box.</param>
/// <param name="Above">Face of the upper box.</param>
/// <param name="Pieces">How many of it one pair of faces takes, at least 1.</param>
/// <param name="Pins">Pins or locks in all.</param>
/// <param name="Use">Standing, hanging or both.</param>
public sealed record Joint(string Below, string Above, int Pieces, int Pins, JointUse Use);

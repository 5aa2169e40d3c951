using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>What joins a box to the one below it.</summary>
/// <param name="Kind">The joint.</param>
/// <param name="Pieces">How many of it.</param>
/// <param name="Pins">Pins or locks in all.</param>
/// <param name="Below">The face of the lower box.</param>
/// <param name="Above">The face of the upper box.</param>
public sealed record StackJoint(Kind Kind, int Pieces, int Pins, string Below, string Above);

using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How far a stack may go without a strap where its boxes are not joined.</summary>
/// <param name="Boxes">At most so many boxes, 1 or more.</param>
/// <param name="Height">At most so high.</param>
public readonly record struct StrapLimit(int Boxes, Length Height);

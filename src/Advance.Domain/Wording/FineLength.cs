using UnitsNet;

namespace Advance.Domain.Wording;

/// <summary>A length that is said in millimetres, or in inches and tenths: how far a hook is off level.</summary>
/// <param name="Length">The length.</param>
public readonly record struct FineLength(Length Length);

using Advance.Domain.Figures;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary>A moment or a shear of a truss and what it bears of it.</summary>
/// <typeparam name="T">Moment or force.</typeparam>
/// <param name="Worst">Of all cases.</param>
/// <param name="Allowed">By its maker, with what wear leaves of it.</param>
/// <param name="Case">In which case the worst is, and where; empty where nobody knows.</param>
public sealed record TrussForce<T>(Figure<T> Worst, Figure<T> Allowed, Words Case)
    where T : struct, IComparable<T>;

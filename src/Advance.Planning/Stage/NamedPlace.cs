using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>A name that places were said by, and whether anything bears it.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">As written.</param>
/// <param name="IsKnown">Whether somebody placed a thing of that name.</param>
/// <param name="Circle">The things that stand at each other in a circle, this one first, so that they are nowhere; empty where it is in none.</param>
/// <param name="Nearest">The known name that was probably meant; null where none is near.</param>
/// <param name="Users">What stands there, in the order written.</param>
/// <param name="At">Where it was said first.</param>
public sealed record NamedPlace(
    Address Address, string Name, bool IsKnown, IReadOnlyList<string> Circle, string? Nearest, IReadOnlyList<string> Users, Mark At);

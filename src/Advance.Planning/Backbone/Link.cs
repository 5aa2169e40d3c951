using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>One connection from a port to a port, that some cable or network must make.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="From">Where the signal or the power comes from.</param>
/// <param name="To">Where it goes.</param>
/// <param name="Carries">What runs through: <c>mic-line</c>, <c>line</c>, <c>network</c>.</param>
/// <param name="At">Where somebody wrote what it rests on.</param>
public sealed record Link(Address Address, Port From, Port To, string Carries, Mark At);

using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>A line from the lower back edge of the lowest box that pulls a hang back, so that it looks further down.</summary>
/// <param name="Pull">In the line.</param>
/// <param name="Up">How steeply it goes up from level, towards the rear.</param>
/// <param name="To">What it goes to, in words.</param>
/// <param name="At">Where it was written.</param>
public sealed record PullBack(Given<Mass> Pull, Given<Angle> Up, string To, Mark At);

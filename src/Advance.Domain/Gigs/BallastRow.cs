using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>Weight that keeps something from tipping or sliding.</summary>
/// <param name="Item">Its kind in the stock, or words.</param>
/// <param name="Count">How many of it, 1 or more.</param>
/// <param name="Weight">Of each; null means as its kind.</param>
/// <param name="IsFixed">Whether it is fixed to what it holds; what lies loose counts for nothing.</param>
/// <param name="Across">Of its middle from that of the lowest thing, towards stage left as it faces the audience; null means none.</param>
/// <param name="Back">The same towards its rear; null means none.</param>
/// <param name="Height">Of its middle above the ground; null means on the ground.</param>
/// <param name="At">Where it was written.</param>
public sealed record BallastRow(
    string Item, int Count, Given<Mass>? Weight, bool IsFixed, Given<Length>? Across, Given<Length>? Back, Given<Length>? Height, Mark At);

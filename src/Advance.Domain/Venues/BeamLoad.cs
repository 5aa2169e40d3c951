using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>What others have hung on a beam.</summary>
/// <param name="What">In words.</param>
/// <param name="Along">From the end that the beam is measured from.</param>
/// <param name="Weight">Of it.</param>
/// <param name="At">Where it was written.</param>
public sealed record BeamLoad(string What, Given<Length> Along, Given<Mass> Weight, Mark At);

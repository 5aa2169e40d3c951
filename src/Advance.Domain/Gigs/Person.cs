using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>Somebody of the crew.</summary>
/// <param name="Name">As printed.</param>
/// <param name="Does">What they do on the gig.</param>
/// <param name="Skills">What they can do.</param>
/// <param name="Phone">As dialled; null where not said.</param>
/// <param name="Call">When they start; null where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Person(string Name, string Does, IReadOnlyList<string> Skills, Given<string>? Phone, Given<Moment>? Call, Mark At);

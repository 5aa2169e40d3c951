using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>How the signal gets to every box, and what is set where.</summary>
/// <param name="Links">From processor to first box, and from box to box.</param>
/// <param name="Figures">Delays and what else is worked out.</param>
/// <param name="Chosen">Addresses on the network.</param>
public sealed record DrivePlan(IReadOnlyList<Link> Links, IReadOnlyList<Stated> Figures, Choices Chosen);

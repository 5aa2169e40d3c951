using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>One connection from a port to a port, that some cable or network must make.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="From">Where the signal or the power comes from.</param>
/// <param name="To">Where it goes.</param>
/// <param name="Carries">What runs through: <c>mic-line</c>, <c>line</c>, <c>network</c>, <c>mains</c>, <c>lighting-control</c>, <c>speaker</c>.</param>
/// <param name="RestsOn">The open questions about where it goes.</param>
/// <param name="At">Where somebody wrote what it rests on.</param>
public sealed record Link(Address Address, LinkEnd From, LinkEnd To, string Carries, Doubts RestsOn, Mark At)
{
    /// <summary>The act it is up for; null where it is up all day.</summary>
    public string? Act { get; init; }
}

using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>What the plan knows of a load from where its piece stands in it.</summary>
/// <param name="Use">What it is.</param>
/// <param name="Name">On paper; null where the piece's own will do.</param>
/// <param name="Spot">Where it is; null where the piece knows better.</param>
/// <param name="Height">How high, in metres; null where nobody knows.</param>
/// <param name="Act">Whose it is; null for nobody's.</param>
internal sealed record LoadPlace(PowerUse Use, string? Name = null, Spot? Spot = null, double? Height = 0, string? Act = null)
{
    /// <summary>The open questions about where it is and how high.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;
}

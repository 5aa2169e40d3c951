using Advance.Domain.Figures;

namespace Advance.Domain.Issues;

/// <summary>What was kept of the issue before this one, so that the next plan changes as little as it can and changes can be told.</summary>
/// <param name="Revision">Its letter.</param>
/// <param name="Chosen">What was chosen then.</param>
/// <param name="Figures">Every figure as it was printed then, by address.</param>
public sealed record LastIssue(string Revision, Choices Chosen, IReadOnlyDictionary<Address, string> Figures)
{
    /// <summary>Whether the same was chosen and the same figures came out.</summary>
    public bool SaysTheSameAs(LastIssue other) =>
        Chosen.InOrder.SequenceEqual(other.Chosen.InOrder)
        && Figures.Count == other.Figures.Count
        && Figures.All(figure => other.Figures.GetValueOrDefault(figure.Key) == figure.Value);
}

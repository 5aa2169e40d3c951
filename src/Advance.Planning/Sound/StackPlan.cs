using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>One stack, on its side.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">Its name on paper: <c>Main SR</c>.</param>
/// <param name="Stack">As written.</param>
/// <param name="Boxes">From the floor up.</param>
/// <param name="FedBy">The port that feeds it; null where not said.</param>
/// <param name="RestsOn">The open questions about where it is.</param>
public sealed record StackPlan(
    Address Address, string Name, Stack Stack, IReadOnlyList<StackedBox> Boxes, Port? FedBy, Doubts RestsOn);

using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Boxes linked from one to the next, that hang on one output.</summary>
/// <param name="Address">Its name in the plan: <c>sound/Main SR/fed-by</c>.</param>
/// <param name="Part">Which boxes of the stack.</param>
/// <param name="Boxes">In the order of the signal, at least one.</param>
/// <param name="Written">What feeds it, as written; null where not said.</param>
/// <param name="FedBy">The port; without a number where it is to be chosen, null where not said or open.</param>
public sealed record Chain(Address Address, ChainPart Part, IReadOnlyList<StackedBox> Boxes, Given<PortRange>? Written, Port? FedBy);

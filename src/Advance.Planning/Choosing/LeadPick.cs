using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>What was picked for a run.</summary>
/// <param name="Run">Its name in the plan.</param>
/// <param name="Chain">The leads; null where there are none.</param>
/// <param name="Own">The lead among them that comes along with the unit; null where none does.</param>
/// <param name="Gap">Why there are none.</param>
/// <param name="Longest">The longest that owned leads could make between its connectors, in millimetres; 0 where nothing fits.</param>
internal sealed record LeadPick(Address Run, LeadChain? Chain, Kind? Own, RunGap Gap, long Longest);

using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A stage box and how many ports it has; unknown where its kind is, or no stock says.</summary>
/// <param name="Device">As written.</param>
/// <param name="Kind">Its kind; null where unknown.</param>
/// <param name="Inputs">Ports for lines.</param>
/// <param name="Outputs">Ports for returns.</param>
public sealed record PortBox(Device Device, Kind? Kind, Figure<int> Inputs, Figure<int> Outputs);

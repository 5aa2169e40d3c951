using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>How much an allowance puts aside; one of the two is there.</summary>
/// <param name="Draw">Power in use.</param>
/// <param name="Weight">Weight to carry or to hang.</param>
internal sealed record Amount(Power? Draw, Mass? Weight)
{
    /// <summary>What the power hangs on; empty where not said.</summary>
    public string FedBy { get; init; } = "";
}

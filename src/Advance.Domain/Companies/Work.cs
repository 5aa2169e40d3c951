using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>How long something takes, and with how many hands: <c>25 min x 3</c>.</summary>
/// <param name="Time">With that many hands; 0 or more.</param>
/// <param name="Hands">At least 1.</param>
public readonly record struct Work(Duration Time, int Hands)
{
    /// <summary>Work from minutes.</summary>
    public static Work Of(double minutes, int hands) => new(Duration.FromSeconds(minutes * 60), hands);
}

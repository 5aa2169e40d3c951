using Advance.Domain.Facts;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Where the rules of North America hold.</summary>
internal static class NorthAmerica
{
    /// <summary>Whether a supply looks like that: 60 Hz, and 100 to 127, 208, 240 or 277 V; not where its voltage or its frequency is unknown.</summary>
    public static bool Has(Supply? supply) => supply is { Frequencies.Count: > 0 } && supply.Frequencies.All(frequency => frequency.Hertz == 60)
        && supply.Voltages[0].Least.Volts is (>= 100 and <= 127) or (>= 207 and <= 209) or (>= 239 and <= 241) or (>= 276 and <= 278);

    /// <summary>Whether they hold for a service: what the venue says, else what its supply looks like.</summary>
    public static bool Has(Service service) => service.Rules is { IsKnown: true } said ? said.Value == WiringRules.Nec : service.Supply.Is(out var supply) && Has(supply);
}

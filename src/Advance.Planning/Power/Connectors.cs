using System.Globalization;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What the name of a mains connector says of it: <c>16 A blue</c> carries 16 A, <c>L21-30</c> 30 A.</summary>
internal static class Connectors
{
    /// <summary>What it carries; unknown where its name does not say.</summary>
    /// <param name="connector">As the stock names it.</param>
    /// <param name="why">Where somebody wrote that this thing has it.</param>
    /// <param name="rules">Whose rules hold: the same shell counts for more in North America.</param>
    public static Figure<ElectricCurrent> Rating(string connector, Reason why, WiringRules? rules = null) =>
        new(Amperes(connector, rules) is { } amperes ? ElectricCurrent.FromAmperes(amperes) : null, Domain.Facts.Doubts.None, why);

    private static double? Amperes(string connector, WiringRules? rules)
    {
        if (MainsConnectors.Find(connector) is { } known)
        {
            return (rules == WiringRules.Nec ? known.RatingInNorthAmerica ?? known.Rating : known.Rating).Amperes;
        }

        var words = connector.Split(' ');
        var unit = Array.IndexOf(words, "A");
        return unit > 0 && double.TryParse(words[unit - 1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amperes) ? amperes : null;
    }
}

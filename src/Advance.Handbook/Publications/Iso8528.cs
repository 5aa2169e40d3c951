using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>ISO 8528-1, generating sets driven by reciprocating engines: application, ratings and performance. The year is from memory.</summary>
public static class Iso8528
{
    private const string Title = "ISO 8528-1";
    private const string Edition = "2018";

    /// <summary>Sets are rated at 0.8 lagging.</summary>
    public static readonly Publication Rating = new(Title, Edition, "rated power factor", Standing.Read);

    /// <summary>Prime power: 70 % of the rating on average over 24 h.</summary>
    public static readonly Publication Prime = new(Title, Edition, "prime power, permissible average power", Standing.Read);

    /// <summary>How the average is made: less than 30 % counts as 30 %, standstill does not count.</summary>
    public static readonly Publication Mean = new(Title, Edition, "average power output", Standing.FromMemory);
}

namespace Advance.Golden;

/// <summary>Another value for everything in a sample that is still to be confirmed, by what it is about. The TBC stays behind it.</summary>
internal static class Flips
{
    public static readonly IReadOnlyDictionary<string, (string Old, string New)> HarvestSupper = new Dictionary<string, (string Old, string New)>(StringComparer.Ordinal)
    {
        ["schedule / 15:00 / who"] = ("electrician TBC", "Bea Orme TBC"),
        ["acts / The Threshers / inputs / 12 / from"] = ("act TBC", "shop TBC"),
        ["stage / downstage-edge"] = ("6 m US of hall door line TBC", "5.5 m US of hall door line TBC"),
        ["key-for-load-out"] = ("TBC venue", "Ada Pell TBC venue"),
        ["services / A / earthing"] = ("TN-S TBC", "TN-C-S TBC"),
        ["services / A / residual-protection"] = ("TBC venue", "100 mA TBC venue"),
        ["services / B / earthing"] = ("TN-S TBC", "TN-C-S TBC"),
        ["services / B / behind"] = ("at 96 dB(A) TBC", "at 90 dB(A) TBC"),
        ["safety / hospital"] = ("TBC venue", "Ambling General TBC venue"),
    };
}

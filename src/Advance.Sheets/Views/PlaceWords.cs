using Advance.Domain.Places;
using Advance.Domain.Wording;

namespace Advance.Sheets.Views;

/// <summary>A place as it is said on a dock.</summary>
internal static class PlaceWords
{
    private static readonly string[] Areas = ["DSR", "DSC", "DSL", "SR", "C", "SL", "USR", "USC", "USL"];

    /// <summary><c>SR 2.6 m US 1.5 m</c>, <c>6 m US of hall door line</c>, <c>drums</c>, <c>USL</c>.</summary>
    public static string Of(Place place, Speech speech) => place switch
    {
        Place.AtArea area => Areas[(int)area.Area],
        Place.AtThing thing => thing.Name,
        Place.AtPoint point => $"{Sideways(point.X, speech)} {Along(point.Y, speech)}",
        Place.Measured measured => Measured(measured, speech),
        _ => "centre",
    };

    /// <summary><c>0.6 m above floor</c>.</summary>
    public static string Of(HeightFrom height, Speech speech) =>
        $"{speech.Say(height.Height)} above {height.Above ?? HeightFrom.Floor}";

    /// <summary><c>8 × 5 m</c>.</summary>
    public static string Of(Size size, Speech speech)
    {
        string[] sides = [speech.Say(size.Width), speech.Say(size.Depth), .. size.Height is { } height ? [speech.Say(height)] : Array.Empty<string>()];
        return string.Join(" × ", sides);
    }

    private static string Measured(Place.Measured place, Speech speech)
    {
        if (place.Of is { } from && place.Sideways.Meters <= 0)
        {
            return $"{speech.Say(UnitsNet.Length.FromMeters(Math.Abs(place.Upstage.Meters)))} {(place.Upstage.Meters < 0 ? "DS" : "US")} of {from}";
        }

        var parts = new List<string>();
        if (place.Sideways.Meters > 0)
        {
            parts.Add(place.Side switch
            {
                Side.StageRight => $"SR {speech.Say(place.Sideways)}",
                Side.StageLeft => $"SL {speech.Say(place.Sideways)}",
                _ => $"{speech.Say(place.Sideways)} off centre",
            });
        }

        parts.Add(Along(place.Upstage, speech));
        return string.Join(" ", parts) + (place.Of is { } of ? $" of {of}" : "");
    }

    // Half a centimetre off the centre line is on it.
    private static string Sideways(UnitsNet.Length x, Speech speech) => Math.Abs(x.Meters) < 0.005 ? "C" : $"{(x.Meters < 0 ? "SR" : "SL")} {speech.Say(UnitsNet.Length.FromMeters(Math.Abs(x.Meters)))}";

    private static string Along(UnitsNet.Length y, Speech speech) => $"{(y.Meters < 0 ? "DS" : "US")} {speech.Say(UnitsNet.Length.FromMeters(Math.Abs(y.Meters)))}";
}

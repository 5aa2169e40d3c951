using Advance.Domain.Venues;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>A beam of the roof that points hang on.</summary>
internal static class RoofBeamShape
{
    private static readonly RecordShape<BeamLoad> Other = new("beam-load", "What others have hung on a beam.", keys =>
    {
        var what = keys.Needed("what", Written.Text, "In words.");
        var along = keys.Asked("along", Written.Length, "From the end that the beam is measured from.");
        var weight = keys.Asked("weight", Written.As(Quantities.Load), "Of it.");
        return row => new BeamLoad(what(row), along(row), weight(row), row.At);
    });

    public static readonly RecordShape<RoofBeam> It = new("roof-beam", "A beam of the roof that points hang on.", keys =>
    {
        var span = keys.Asked("span", Written.Length, "Between its supports.");
        var centre = keys.Open("centre", Written.As(Quantities.Load), "What it may carry in its middle.");
        var uniform = keys.Open("uniform", Written.As(Quantities.Load), "What it may carry spread evenly, all together.");
        var moment = keys.Open("moment", Written.As(Quantities.Moment), "The largest, where an engineer says so.");
        var shear = keys.Open("shear", Written.As(Quantities.Force), "The largest.");
        var ends = keys.Defaulted("ends", Written.OneOf("beam-ends", "how a beam rests", ("simple", true), ("continuous", false)), true, "Whether it rests on its two ends and nothing else.", "simple");
        var most = keys.Open("most-points", Written.Count, "How many points on it may be used at once, those of others among them.");
        var apart = keys.Open("points-apart", Written.Length, "How far apart points that are used must be at least.");
        var timber = keys.Defaulted("made", Written.OneOf("beam-made", "what a beam is made of", ("metal", false), ("timber", true)), false, "What it is made of: timber bears less the longer a load hangs.", "metal");
        var bay = keys.Open("bay", Written.Name, "The bay of the roof that it is in.");
        var others = keys.Any("others", Written.Table(Other), "What else hangs on it.");
        return row => new RoofBeam(row.Name, span(row), centre(row), uniform(row), row.At) { Moment = moment(row), Shear = shear(row), IsSimple = ends(row), MostPoints = most(row), Apart = apart(row), Bay = bay(row), IsTimber = timber(row), Others = others(row) };
    });
}

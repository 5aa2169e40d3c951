using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>What a powered thing asks of the mains.</summary>
internal static class MainsShape
{
    public static readonly RecordShape<Mains> It = new("mains", "What a powered thing asks of the mains.", keys =>
    {
        var supply = keys.Open("supply", Written.Supply, "Voltages and frequency that it takes.");
        var inUse = keys.Open("in-use", Written.Current, "Draw in use.");
        var atMost = keys.Open("at-most", Written.Current, "Draw at most.");
        var powerFactor = keys.Open("power-factor", Written.PowerFactor, "Power over volts times amperes, over 0 to 1.");
        var inrush = keys.Open("inrush", Written.Current, "Peak current when it is switched on.");
        var leakage = keys.Open("leakage", Written.Current, "Current in the protective conductor.");
        var inlet = keys.Defaulted("inlet", Written.Name, "", "Connector.", "not said");
        var link = keys.Defaulted("link", Written.Name, "", "Outlet that hands the mains on.", "none");
        var linkCarries = keys.Open("link-carries", Written.Current, "What that outlet may carry.");
        var harmonic = keys.Open("third-harmonic", Written.Percentage, "Third harmonic, as a share of the fundamental.");
        var displacement = keys.Open("displacement", Written.Angle, "How far the fundamental lags the voltage; negative where it leads. Not the arc cosine of the power factor.");
        var fifth = keys.Open("fifth-harmonic", Written.Percentage, "Fifth harmonic, as a share of the fundamental.");
        var seventh = keys.Open("seventh-harmonic", Written.Percentage, "Seventh harmonic, as a share of the fundamental.");
        var ninth = keys.Open("ninth-harmonic", Written.Percentage, "Ninth harmonic, as a share of the fundamental.");
        var continuous = keys.Open("continuous", Written.YesNo, "Whether it may draw its most for three hours or more.");
        var steady = keys.Open("steady-power", Written.YesNo, "Whether it draws more current as the voltage falls, so that its power stays the same.");
        var later = keys.Open("starts-later", Written.YesNo, "Whether it starts some time after the mains come back, by itself.");
        var needsType = keys.Open("needs-residual-type", OutletShape.ResidualType, "Of which type a residual-current device before it must be.");
        var cuts = keys.Open("cuts-phase", Written.YesNo, "Whether it dims by cutting the wave.");
        var life = keys.Open("life-safety", Written.YesNo, "Whether people find their way out by it, or are told to: exit lights, voice alarm.");
        var linked = keys.Open("neutral-earth-link", Written.YesNo, "Of a distribution: whether its neutral is joined to its earth inside.");
        var turns = keys.Open("turns", Written.YesNo, "Whether it holds a three-phase motor, which turns the other way when two lines are swapped.");
        var loading = keys.Open("loading", Written.Percentage, "Of a distribution: how much of their ratings its circuits may carry all at once, as its maker states.");
        return row => new Mains(
            supply(row),
            inUse(row),
            atMost(row),
            powerFactor(row),
            inrush(row),
            leakage(row),
            inlet(row),
            link(row),
            linkCarries(row),
            harmonic(row),
            displacement(row))
        {
            FifthHarmonic = fifth(row),
            SeventhHarmonic = seventh(row),
            NinthHarmonic = ninth(row),
            Continuous = continuous(row),
            StartsLater = later(row),
            NeedsResidualType = needsType(row),
            CutsPhase = cuts(row),
            IsLifeSafety = life(row),
            NeutralEarthLink = linked(row),
            SteadyPower = steady(row),
            Turns = turns(row),
            Loading = loading(row),
        };
    });
}

using Advance.Domain.Venues;
using Advance.Reading.Shapes;
using Advance.Reading.Stocks;

namespace Advance.Reading.Venues;

/// <summary>A supply.</summary>
internal static class ServiceShape
{
    public static readonly RecordShape<OtherLoad> OtherLoad = new("other-load", "Somebody else's load on a service.", keys =>
    {
        var what = keys.Needed("what", Written.Text, "Its name.");
        var inUse = keys.Asked("in-use", Written.Current, "What it draws.");
        var time = keys.Open("time", Written.TimeRange, "From when to when; without it all day.");
        return row => new OtherLoad(what(row), inUse(row), time(row), row.At);
    });

    public static readonly RecordShape<UpstreamLimit> Upstream = new("upstream-limit", "What several services hang on together.", keys =>
    {
        var supply = keys.Asked("supply", Written.Supply, "Voltage, phases and frequency.");
        var rating = keys.Asked("rating", Written.Current, "Of its protective device, on each line.");
        var shared = keys.Any("shared-with", Written.Table(OtherLoad), "What else hangs on it, besides what hangs on each service.");
        return row => new UpstreamLimit(row.Name, supply(row), rating(row), shared(row), row.At);
    });

    public static readonly RecordShape<Service> It = new("service", "A supply that the venue or a generator gives.", keys =>
    {
        var place = keys.Asked("place", Written.Text, "Where it comes out, in words.");
        var supply = keys.Asked("supply", Written.Supply, "Voltage, phases and frequency.");
        var rating = keys.Asked("rating", Written.Current, "Of its protective device.");
        var connector = keys.Asked("connector", Written.Text, "What plugs into it.");
        var earthing = keys.Asked("earthing", Written.Text, "TN-S, TN-C-S, TT or IT.");
        var residual = keys.Asked("residual-protection", Written.Current, "Rated residual current; what is not known is never none.");
        var shared = keys.Any("shared-with", Written.Table(OtherLoad), "What else hangs on it.");
        var behind = keys.Open("behind", Written.Text, "What it runs through, such as a sound limiter.");
        var dropUsed = keys.Open("drop-used", Written.Percentage, "Voltage drop used up before it, from the origin of the installation.");
        var link = keys.Open("neutral-earth-link", Written.Text, "Where its neutral is joined to earth; none where it is nowhere.");
        var loop = keys.Open("loop-impedance", Written.Resistance, "Loop impedance at its outlet, line to earth, measured or stated.");
        var fault = keys.Open("fault-current", Written.Current, "The largest current that a fault may draw at its outlet.");
        var electrode = keys.Open("electrode", Written.Resistance, "Resistance of its earth electrode.");
        var device = keys.Open("device", Written.Text, "Protective device and curve: C125, gG 63.");
        var breaks = keys.Open("breaks", Written.Current, "What that device can break.");
        var residualType = keys.Open("residual-type", OutletShape.ResidualType, "Type of its residual-current device: what kinds of current it sees.");
        var residualDelay = keys.Open("residual-delay", Written.Duration, "How long its residual-current device waits; 0 s for one that does not.");
        var outdoor = keys.Open("outdoor", Written.YesNo, "Whether what hangs on it stands in the open or in the wet.");
        var isolated = keys.Open("isolated-by", Written.Text, "Who switches it off, and how.");
        var generator = keys.Optional("generator", GeneratorShape.It, "The set that gives it, where it is a generator.");
        var rules = keys.Open("rules", Written.OneOf("wiring-rules", "whose rules hold", ("IEC", WiringRules.Iec), ("NEC", WiringRules.Nec)), "Whose rules hold for what hangs on it; without it, what its voltage and frequency suggest.");
        var upstream = keys.Open("upstream", Written.Name, "What it hangs on together with others, one of the venue's upstream-limits.");
        var upstreamLine = keys.Open("upstream-line", Written.OneOf("upstream-line", "one of several lines", ("L1", "L1"), ("L2", "L2"), ("L3", "L3")), "Of a service of one line: on which line of its upstream limit it is.");
        return row => new Service(
            row.Name, place(row), supply(row), rating(row), connector(row), earthing(row), residual(row), shared(row), behind(row), row.At)
        {
            DropUsed = dropUsed(row),
            NeutralEarthLink = link(row),
            LoopImpedance = loop(row),
            FaultCurrent = fault(row),
            Electrode = electrode(row),
            Device = device(row),
            Breaks = breaks(row),
            ResidualType = residualType(row),
            ResidualDelay = residualDelay(row),
            IsOutdoor = outdoor(row),
            IsolatedBy = isolated(row),
            Generator = generator(row),
            Rules = rules(row),
            Upstream = upstream(row),
            UpstreamLine = upstreamLine(row),
        };
    });
}

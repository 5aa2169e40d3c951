using Advance.Domain.Companies;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>Settings of a company.</summary>
internal static class PoliciesShape
{
    public static readonly RecordShape<Policies> It = new("policies", "How the company works; what is left out is common practice.", keys =>
    {
        var mics = keys.Defaulted("spare-mics", Written.Share, Policies.Default.SpareMics, "Spares of each kind of microphone.", Say(Policies.Default.SpareMics));
        var directBoxes = keys.Defaulted("spare-di", Written.Share, Policies.Default.SpareDirectBoxes, "Spares of each kind of direct box.", Say(Policies.Default.SpareDirectBoxes));
        var stands = keys.Defaulted("spare-stands", Written.Share, Policies.Default.SpareStands, "Spares of each size of stand.", Say(Policies.Default.SpareStands));
        var ports = keys.Defaulted("free-ports", Written.Share, Policies.Default.FreePorts, "What stays free on each stage box, in and out.", Say(Policies.Default.FreePorts));
        var margins = keys.Defaulted("weight-margin", WeightMarginsShape.It, Policies.Default.WeightMargin, "What is added to a weight, by how it is known.", "0 %, 5 %, 10 %");
        var cables = keys.Defaulted("cables", CablePoliciesShape.It, Policies.Default.Cables, "How long leads must be, and how they are put together.", "common practice");
        var edgeHeight = keys.Defaulted("edge-height", Written.Length, Policies.Default.EdgeHeight, "From what height on an edge of a stage wants a rail.", "0.38 m");
        var strap = keys.Defaulted("stack-strap", StrapLimitShape.It, Policies.Default.StackStrap, "Beyond what a stack that is not joined wants a strap.", "2 boxes, 1.5 m");
        var temperature = keys.Defaulted("temperature", Written.As(Quantities.Temperature), Policies.Default.Temperature, "Of the air, where the gig does not say.", "20 C");
        var fills = keys.Defaulted("fill-offset", Written.Duration, Policies.Default.FillOffset, "By how much fills start later than their way alone asks for.", "5 ms");
        var delays = keys.Defaulted("delay-offset", Written.Duration, Policies.Default.DelayOffset, "By how much delay stacks start later than their way alone asks for.", "10 ms");
        var muted = keys.Defaulted("start-muted", Written.YesNo, Policies.Default.StartMuted, "Whether outputs that drive loudspeakers are muted when they are switched on.", "yes");
        var subnet = keys.Defaulted("subnet", Written.As(Networks.Subnet), Policies.Default.Subnet, "The network of units with a control port, where the gig does not say.", "192.168.10.0/24");
        var controlUnits = keys.Defaulted("control-units", Written.Between("control-units", 1, 32), Policies.Default.ControlUnits, "How many units are planned on one line of lighting control.", "24");
        var freeSlots = keys.Defaulted("free-slots", Written.Share, Policies.Default.FreeSlots, "What stays free of each universe of lighting control while there is room elsewhere.", Say(Policies.Default.FreeSlots));
        var terminators = keys.Defaulted("spare-terminators", Written.Share, Policies.Default.SpareTerminators, "Spares of what ends lines of lighting control.", Say(Policies.Default.SpareTerminators));
        return row => new Policies
        {
            SpareMics = mics(row),
            SpareDirectBoxes = directBoxes(row),
            SpareStands = stands(row),
            FreePorts = ports(row),
            WeightMargin = margins(row),
            Cables = cables(row),
            EdgeHeight = edgeHeight(row),
            StackStrap = strap(row),
            Temperature = temperature(row),
            FillOffset = fills(row),
            DelayOffset = delays(row),
            StartMuted = muted(row),
            Subnet = subnet(row),
            ControlUnits = controlUnits(row),
            FreeSlots = freeSlots(row),
            SpareTerminators = terminators(row),
        };
    });

    private static string Say(Share share) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{share.Percent} % at least {share.AtLeast}");
}

using Advance.Domain.Companies;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using UnitsNet;

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
        var idle = Percent(keys, "idle-share", Policies.Default.IdleShare, "What wedges and backline draw while nobody plays, of their draw in use.");
        var backline = keys.Defaulted("unknown-backline", Written.Power, Policies.Default.UnknownBackline, "Draw of each thing of an act that nobody gave a draw, for as many as there are players.", "500 W");
        var plug = keys.Defaulted("backline-plug", Written.Name, "", "What acts' own things plug into, as the stock names it.", "not known");
        var leakage = keys.Defaulted("unknown-leakage", Written.Current, Policies.Default.UnknownLeakage, "Leakage of a unit that nobody gave one.", "1 mA");
        var inrush = keys.Defaulted("unknown-inrush", Written.Current, Policies.Default.UnknownInrush, "Inrush of a unit that nobody gave one, peak.", "20 A");
        var use = Percent(keys, "circuit-use", Policies.Default.CircuitUse, "A circuit or a service that carries more of its rating is a concern.");
        var spread = Percent(keys, "phase-spread", Policies.Default.PhaseSpread, "How much more than the mean the fullest phase may carry.");
        var generatorLine = Percent(keys, "generator-line", Policies.Default.GeneratorLine, "A line of a generator that carries more of its rated current is a concern.");
        var generatorMean = Percent(keys, "generator-mean", Policies.Default.GeneratorMean, "What a generator may give on average while it runs, of its prime power.");
        var generatorLeast = Percent(keys, "generator-least", Policies.Default.GeneratorLeast, "Hours in which a generator gives less of its prime power are counted.");
        var generatorFuel = keys.Defaulted("generator-fuel", Written.Percentage, Ratio.FromPercent(Policies.Default.GeneratorFuel), "How much fuel is brought, of what the hours burn.", "130 %");
        var generatorUnbalance = Percent(keys, "generator-unbalance", Policies.Default.GeneratorUnbalance, "How uneven the legs of a generator may be, where its maker does not say: negative over positive sequence.");
        var third = Percent(keys, "unknown-third-harmonic", Policies.Default.UnknownThirdHarmonic, "Third harmonic of a unit that nobody gave one, as a share of the fundamental.");
        var angle = keys.Defaulted("unknown-angle", Written.Angle, Policies.Default.UnknownAngle, "How far a unit may lag or lead of which neither displacement nor power factor is known.", "37 deg");
        var dropLighting = Percent(keys, "drop-lighting", Policies.Default.DropLighting, "Voltage drop allowed up to lights.");
        var dropOther = Percent(keys, "drop-other", Policies.Default.DropOther, "Voltage drop allowed up to everything else.");
        var cables = keys.Defaulted("cables", CablePoliciesShape.It, Policies.Default.Cables, "How long leads must be, and how they are put together.", "common practice");
        var stageMains = keys.Defaulted("stage-mains", Written.Length, Policies.Default.StageMains, "How far what an act plays may stand from the nearest box or strip.", "8 m");
        var edgeHeight = keys.Defaulted("edge-height", Written.Length, Policies.Default.EdgeHeight, "From what height on an edge of a stage wants a rail.", "0.38 m");
        var rigging = keys.Defaulted("rigging", RiggingPoliciesShape.It, RiggingPolicies.Default, "How what hangs is reckoned.", "common practice");
        var strap = keys.Defaulted("stack-strap", StrapLimitShape.It, Policies.Default.StackStrap, "Beyond what a stack that is not joined wants a strap.", "2 boxes, 1.5 m");
        var temperature = keys.Defaulted("temperature", Written.As(Quantities.Temperature), Policies.Default.Temperature, "Of the air, where the gig does not say.", "20 C");
        var fills = keys.Defaulted("fill-offset", Written.Duration, Policies.Default.FillOffset, "By how much fills start later than their way alone asks for.", "5 ms");
        var delays = keys.Defaulted("delay-offset", Written.Duration, Policies.Default.DelayOffset, "By how much delay stacks start later than their way alone asks for.", "10 ms");
        var muted = keys.Defaulted("start-muted", Written.YesNo, Policies.Default.StartMuted, "Whether outputs that drive loudspeakers are muted when they are switched on.", "yes");
        var subnet = keys.Defaulted("subnet", Written.As(Networks.Subnet), Policies.Default.Subnet, "The network of units with a control port, where the gig does not say.", "192.168.10.0/24");
        var micLeads = keys.Defaulted("spare-mic-leads", Written.Share, Policies.Default.SpareMicLeads, "Spares of each length of microphone lead.", Say(Policies.Default.SpareMicLeads));
        var mainsLeads = keys.Defaulted("spare-mains-leads", Written.Share, Policies.Default.SpareMainsLeads, "Spares of each length of mains and link leads up to 20 A.", Say(Policies.Default.SpareMainsLeads));
        var lightingLeads = keys.Defaulted("spare-lighting-leads", Written.Share, Policies.Default.SpareLightingLeads, "Spares of each length of lighting-control leads.", Say(Policies.Default.SpareLightingLeads));
        var adapters = keys.Defaulted("spare-adapters", Written.Share, Policies.Default.SpareAdapters, "Spares of each kind of adapter in use.", Say(Policies.Default.SpareAdapters));
        var boxes = keys.Defaulted("spare-boxes", Written.OnePer, Policies.Default.SpareBoxes, "Spares of each kind of self-powered loudspeaker.", Say(Policies.Default.SpareBoxes));
        var fixtures = keys.Defaulted("spare-fixtures", Written.Share, Policies.Default.SpareFixtures, "Spares of each kind of fixture.", Say(Policies.Default.SpareFixtures));
        var fixturesOver = keys.Defaulted("spare-fixtures-over", Written.Count, Policies.Default.SpareFixturesOver, "A rig of so many fixtures carries no spare.", "10");
        var radios = keys.Defaulted("spare-radio", Written.OnePer, Policies.Default.SpareRadios, "Spares of each kind of radio microphone or pack.", Say(Policies.Default.SpareRadios));
        var lifts = keys.Defaulted("lifts", LiftLimitsShape.It, LiftLimits.Default, "What people may lift together.", "25 kg, 45 kg, 80 kg");
        var truck = keys.Defaulted("truck", LoadLimitsShape.It, LoadLimits.Default, "How full a truck may be.", "90 % of its payload, 85 % of its floor");
        var corner = keys.Defaulted("corner-clearance", Written.Length, Policies.Default.CornerClearance, "Kept all round what is turned in a corner.", "0.05 m");
        var tasks = keys.Defaulted("tasks", TaskTimesShape.It, TaskTimes.Default, "How long the tasks of a load-in take.", "common practice");
        var changeover = keys.Defaulted("changeover", ChangeoverTimesShape.It, ChangeoverTimes.Default, "How long it takes from one act to the next.", "common practice");
        var breaks = keys.Defaulted("breaks", MealBreaksShape.It, MealBreaks.Default, "When people who work must eat.", "after 5 h, for 30 min");
        var controlUnits = keys.Defaulted("control-units", Written.Between("control-units", 1, 32), Policies.Default.ControlUnits, "How many units are planned on one line of lighting control.", "24");
        var freeSlots = keys.Defaulted("free-slots", Written.Share, Policies.Default.FreeSlots, "What stays free of each universe of lighting control while there is room elsewhere.", Say(Policies.Default.FreeSlots));
        var terminators = keys.Defaulted("spare-terminators", Written.Share, Policies.Default.SpareTerminators, "Spares of what ends lines of lighting control.", Say(Policies.Default.SpareTerminators));
        var standing = keys.Defaulted("standing", StandingPoliciesShape.It, StandingPolicies.Default, "How safely things stand.", "common practice");
        var leadTimes = keys.Defaulted("lead-times", LeadTimesShape.It, LeadTimes.Default, "How many days before the show papers must be there.", "loads 21, power and documents 14, patch and crew 7");
        var hireDays = keys.Defaulted("hire-days", HireDaysShape.It, HireDays.Default, "How long hired things are kept beside the days of the gig.", "1 day before, 1 after");
        return row => new Policies
        {
            SpareMics = mics(row),
            SpareDirectBoxes = directBoxes(row),
            SpareStands = stands(row),
            FreePorts = ports(row),
            WeightMargin = margins(row),
            IdleShare = idle(row).Percent,
            UnknownBackline = backline(row),
            BacklinePlug = plug(row),
            UnknownLeakage = leakage(row),
            UnknownInrush = inrush(row),
            CircuitUse = use(row).Percent,
            PhaseSpread = spread(row).Percent,
            GeneratorLine = generatorLine(row).Percent,
            GeneratorMean = generatorMean(row).Percent,
            GeneratorLeast = generatorLeast(row).Percent,
            GeneratorFuel = generatorFuel(row).Percent,
            GeneratorUnbalance = generatorUnbalance(row).Percent,
            UnknownThirdHarmonic = third(row).Percent,
            UnknownAngle = angle(row),
            DropLighting = dropLighting(row).Percent,
            DropOther = dropOther(row).Percent,
            Cables = cables(row),
            StageMains = stageMains(row),
            EdgeHeight = edgeHeight(row),
            Rigging = rigging(row),
            StackStrap = strap(row),
            Temperature = temperature(row),
            FillOffset = fills(row),
            DelayOffset = delays(row),
            StartMuted = muted(row),
            Subnet = subnet(row),
            SpareMicLeads = micLeads(row),
            SpareMainsLeads = mainsLeads(row),
            SpareLightingLeads = lightingLeads(row),
            SpareAdapters = adapters(row),
            SpareBoxes = boxes(row),
            SpareFixtures = fixtures(row),
            SpareFixturesOver = fixturesOver(row),
            SpareRadios = radios(row),
            Lifts = lifts(row),
            Truck = truck(row),
            CornerClearance = corner(row),
            Tasks = tasks(row),
            Changeover = changeover(row),
            Breaks = breaks(row),
            ControlUnits = controlUnits(row),
            FreeSlots = freeSlots(row),
            SpareTerminators = terminators(row),
            Standing = standing(row),
            LeadTimes = leadTimes(row),
            HireDays = hireDays(row),
        };
    });

    private static Func<Row, Ratio> Percent(Keys keys, string key, double percent, string words) =>
        keys.Defaulted(key, Written.Percentage, Ratio.FromPercent(percent), words, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{percent} %"));
    private static string Say(OnePer one) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"1 per {one.Each}{(one.Over > 0 ? $" over {one.Over}" : "")}");

    private static string Say(Share share) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{share.Percent} % at least {share.AtLeast}");
}

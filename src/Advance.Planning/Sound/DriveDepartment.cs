using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Links boxes, decides where they are crossed, and works out what is set on each.</summary>
public static class DriveDepartment
{
    /// <summary>Chooses links, settings and addresses.</summary>
    public static DrivePlan Choose(Gig gig, Company company, Stock stock, SoundPlan sound, Choices earlier)
    {
        var units = new SoundUnits(sound.Devices, sound.Piles);
        var outputs = OutputChoice.Of(sound, units, earlier);
        var links = Links(sound, units, outputs).ToList();
        var wiring = new Wiring([.. sound.Links, .. links], units);
        var speed = SoundTravel.Speed(gig, company.Policies);
        var timings = new Timings(sound.Piles, speed, company.Policies);
        var settings = new OutputSettings(wiring, timings, speed, company.Policies);
        var driven = sound.Devices.Where(device => device.Role == SoundRole.Processor).SelectMany(settings.Of).ToList();
        var byPort = driven.DistinctBy(output => output.Port).ToDictionary(output => output.Port);
        var boxes = new BoxSettings(wiring, units, byPort, settings, timings);
        var network = AddressBook.Of(gig, company, stock, sound, earlier);
        var plan = new DrivePlan(links, [], Chosen(outputs, network))
        {
            Outputs = driven,
            Boxes = [.. sound.Piles.SelectMany(stack => stack.Boxes.Where(box => box.IsLoudspeaker).Select(box => boxes.Of(stack, box)))],
            DevicePaths = [.. sound.Devices.Where(IsDriven).Select(device => PathOf(device, wiring))],
            Loads = [.. AmplifierLoads.Of(sound.Devices, wiring)],
            Units = network,
            Timings = sound.Piles.DistinctBy(stack => stack.Address).ToDictionary(stack => stack.Address, timings.Of),
            SpeedOfSound = speed,
        };
        return plan with { Figures = [.. FiguresOf(plan)] };
    }

    private static IEnumerable<Link> Links(SoundPlan sound, SoundUnits units, IReadOnlyDictionary<Address, Port> outputs)
    {
        var feeds = new WrittenFeeds(units);
        var first = sound.Piles.SelectMany(stack => stack.Chains
            .Where(chain => outputs.ContainsKey(chain.Address))
            .Select(chain => feeds.First(stack, chain, outputs[chain.Address])));
        return first.Concat(BoxLinks.Of(sound.Piles, units));
    }

    private static bool IsDriven(SoundDevice device) => device.Role is SoundRole.Processor or SoundRole.Amplifier;

    // A device is fed when its first input is; channels of an amplifier are followed from the boxes.
    private static SignalPath PathOf(SoundDevice device, Wiring wiring) =>
        wiring.Trace(wiring.FedInputs(device.Name) is [var fed, ..] ? fed : new Port(device.Name, PortKind.Input, Number: 1));

    private static Choices Chosen(IReadOnlyDictionary<Address, Port> outputs, IReadOnlyList<NetworkUnit> units) => new(
    [
        .. outputs.Select(output => KeyValuePair.Create(output.Key, output.Value.ToString())),
        .. units.Where(unit => unit.Network is not null).Select(unit => KeyValuePair.Create(unit.NetworkAt, unit.Network!.Value.ToString())),
    ]);

    private static IEnumerable<Stated> FiguresOf(DrivePlan plan) =>
    [
        .. plan.Boxes.Count > 0 ? [Stated.Of(Address.Of("sound") / "speed-of-sound", "speed of sound", plan.SpeedOfSound)] : Array.Empty<Stated>(),
        .. plan.Outputs.SelectMany(output => output.Figures),
        .. plan.Boxes.SelectMany(box => box.Figures),
        .. plan.Loads.SelectMany(load => load.Figures),
    ];
}

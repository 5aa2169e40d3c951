using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>Makes the drive sheet.</summary>
internal sealed class DriveViews
{
    private const int GainDecimals = 1;
    private const int MillisecondDecimals = 2;

    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;
    private readonly LeadCells leads;

    private DriveViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        leads = new LeadCells(plan, speech);
    }

    /// <summary>Null where nothing is driven.</summary>
    public static DriveView? Of(Plan plan) => plan.Drive.Boxes.Count > 0 || plan.Drive.Units.Count > 0 ? new DriveViews(plan).View() : null;

    private DriveView View() => new(
        [.. plan.Sound.Devices.Where(device => device.Role == SoundRole.Processor).Select(ProcessorOf)],
        [.. plan.Drive.Boxes.Select(BoxOf)],
        [.. plan.Drive.Units.Select(UnitOf)],
        [.. plan.Drive.Loads.Select(AmplifierOf)],
        [.. Facts()],
        [.. new DriveSteps(plan).All()],
        FindingViews.Heavy(plan, finding => FindingViews.IsOf(finding, "sound", "network")),
        Cells.Head(plan.Cables.RestsOn.With(plan.Sound.Piles.Aggregate(Doubts.None, (sum, stack) => sum.With(stack.RestsOn)))));

    private IEnumerable<PairView> Facts()
    {
        yield return new PairView("Speed of sound", cells.WithUnit(plan.Drive.SpeedOfSound));
        if (plan.Drive.Units.Any(unit => unit.Network is not null))
        {
            var written = plan.Brief.Gig.Network?.Subnet;
            var subnet = written is { } given && given.Is(out var own) ? own : plan.Brief.Company.Policies.Subnet;
            yield return new PairView("Network", Cell.Of(subnet.ToString()) with { Tbc = written?.Doubt is { } doubt ? cells.Note(doubt) : null });
        }
    }

    private DriveView.Processor ProcessorOf(SoundDevice device)
    {
        var outputs = plan.Drive.Outputs.Where(output => output.Device.Name == device.Name).ToList();
        var inputs = outputs.SelectMany(output => output.From).Distinct().OrderBy(port => port.Number).ToList();
        return new DriveView.Processor(
            device.Name,
            Cell.Of(device.Piece.Item),
            cells.Of(device.Device.Place),
            [.. inputs.Select(input => new PairView($"in {input.Number}", leads.From(LinkInto(input))))],
            [.. outputs.Select(output => new DriveView.MatrixRow(Cell.Of($"out {output.Port.Number}"), [.. inputs.Select(input => Cell.Of(output.From.Contains(input) ? "●" : ""))]))],
            [.. outputs.Select(OutputOf)]);
    }

    private DriveView.Output OutputOf(DriveOutput output)
    {
        var set = output.Set;
        return new DriveView.Output(
            Cell.Of(output.Port.ToString()) with { Strong = true },
            Cell.Of(string.Join("; ", output.Stacks.Select(stack => $"{stack.Name}: {BoxWords(output, stack)}"))),
            leads.Lead(plan.Links.FirstOrDefault(link => link.From.Port == output.Port)),
            Cell.Of(set.Polarity.Value == Polarity.Reversed ? "reversed" : "normal") with { Tbc = cells.NoteOf(set.Polarity.RestsOn) },
            Number(set.Gain, gain => gain.Decibels, GainDecimals),
            Number(set.Delay, delay => delay.Milliseconds, MillisecondDecimals),
            set.DelayWay is { } way ? cells.WithUnit(way) : Cell.Blank,
            Cell.Of(set.DelayFrom),
            Filter(set.HighPass),
            Filter(set.LowPass),
            set.Aim is { } aim ? cells.WithUnit(aim) : Cell.Blank,
            Cell.Of(set.StartsMuted is { Value: true } ? "muted" : "open"),
            Cell.Of(output.Row?.Note ?? ""));
    }

    private DriveView.Box BoxOf(DrivenBox box) => new(
        Cell.Of(box.Box.Piece.Name) with { Strong = true },
        Cell.Of(box.Box.Piece.Item),
        Cell.Of(box.Output?.Port.ToString() ?? ""),
        box.In is null ? new Cell("nothing") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : leads.From(box.In),
        Cell.Of(box.Set.Polarity.Value == Polarity.Reversed ? "reversed" : "normal"),
        Number(box.Set.Delay, delay => delay.Milliseconds, MillisecondDecimals),
        Filter(box.Set.HighPass),
        Filter(box.Set.LowPass),
        box.Set.Aim is { } aim ? cells.WithUnit(aim) : Cell.Blank);

    private DriveView.Unit UnitOf(NetworkUnit unit) => new(
        Cell.Of(unit.Name) with { Strong = true },
        Cell.Of(unit.Kind.Id),
        Cell.Of(PlaceOf(unit)),
        Address(unit),
        Cell.Of(unit.Software));

    private Cell Address(NetworkUnit unit) => unit switch
    {
        { Network: { } address } => Cell.Of(address.ToString()) with { Tbc = cells.NoteOf(unit.RestsOn), Strong = true },
        { HasPort: true } => new Cell("none") { Verdict = Paper.Tree.Verdict.CannotBeJudged, Tbc = cells.NoteOf(unit.RestsOn) },
        _ => Cell.Blank,
    };

    private string PlaceOf(NetworkUnit unit)
    {
        if (plan.Drive.Of(unit.Address) is { } box)
        {
            return $"box {box.Box.Position} of {box.Stack.Name}";
        }

        var device = plan.Sound.Devices.FirstOrDefault(device => device.Piece.Address == unit.Address)?.Device;
        return device?.Place is { } place ? cells.Of(place).Text : "";
    }

    private DriveView.Amplifier AmplifierOf(AmplifierLoad load)
    {
        var impedance = cells.WithUnit(load.Impedance);
        return new DriveView.Amplifier(
            Cell.Of(load.Port.ToString()) with { Strong = true },
            Cell.Of(string.Join(", ", load.Boxes.Select(box => box.Piece.Name))),
            load.Impedance.AtLeast(load.Least) == Domain.Figures.Verdict.Fails ? impedance with { Verdict = Paper.Tree.Verdict.Fails } : impedance);
    }

    private Link? LinkInto(Port input) => plan.Links.FirstOrDefault(link => link.To.Port == input && link.Carries != "mains");

    private static string BoxWords(DriveOutput output, StackPlan stack) => string.Join(" + ", output.Feeds
        .Where(fed => fed.Stack.Address == stack.Address)
        .GroupBy(fed => fed.Box.Piece.Item, StringComparer.Ordinal)
        .Select(group => group.Count() > 1 ? $"{group.Count()} {group.Key}" : group.Key));

    private Cell Filter(Figure<Frequency>? figure) => figure is { } filter ? cells.WithUnit(filter) : Cell.Blank;

    private Cell Number<T>(Figure<T> figure, Func<T, double> inUnit, int decimals)
        where T : struct, IComparable<T>
    {
        var cell = figure.Value is { } value
            ? Cell.Number(inUnit(value), Numbers.Plain(inUnit(value), decimals))
            : new Cell("unknown") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
        return cell with { Tbc = cells.NoteOf(figure.RestsOn) };
    }
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Naming;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>sound/no-such-port</c></summary>
internal sealed class NoSuchPort : Rule<NoSuchPort.Case>
{
    public override string Name => "sound/no-such-port";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something is fed from, or feeds, a device that there is not, or a port that the device does not have.";

    public override string Why => "What is written hangs on nothing, and its lead is cut and carried all the same.";

    public override string Cures => "Write the device and the port as they are.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var units = new SoundUnits(plan.Sound.Devices, plan.Sound.Piles);
        var ports = WrittenPorts.Of(plan.Sound, units).Select(port => Judge(port, units));
        var inputs = plan.Sound.Devices.Select(JudgeInputs);
        var stacks = plan.Sound.Piles.DistinctBy(stack => stack.Written).SelectMany(stack => JudgeBefore(stack, plan.Sound.Piles));
        return ports.Concat(inputs).OfType<Case>().Concat(stacks);
    }

    protected override Said Say(Case found) => found.Says!;

    private static Case? Judge(WrittenPort written, SoundUnits units)
    {
        var ports = written.Ports;
        if (units.Piece(ports.Device) is not { } piece)
        {
            return Of(written, Verdict.Fails, Unknown(written.User, ports.Device, units.Names, "device"));
        }

        // What no stock has is asked about by stock/too-few.
        if (piece.Kind is not { } kind)
        {
            return null;
        }

        var port = ports.Kind ?? PortKind.Output;
        if (ports.Kind is not null && IsWrongWay(port, written.IsFed))
        {
            return Of(written, Verdict.Fails, WrongWay(written, port));
        }

        if (ports.Numbers is not { } numbers)
        {
            return Of(written, Verdict.Holds, null);
        }

        if (Signals.Count(kind, port) is not { } count)
        {
            return Of(written, Verdict.CannotBeJudged, NotKnown(written, port, numbers.Last));
        }

        var said = numbers.Last > count ? TooHigh(written, port, numbers.Last, count) : Mismatch(written, port, kind);
        return Of(written, said is null ? Verdict.Holds : Verdict.Fails, said);
    }

    // A link gives to one and takes from another; an in only takes, an out only gives.
    private static bool IsWrongWay(PortKind kind, bool isFed) => kind != PortKind.Link && (kind == PortKind.Output) != isFed;

    private static Said WrongWay(WrittenPort written, PortKind kind) => new(
        $"{written.User}: {written.Ports.Device} {Word(kind)} is no port to be {(written.IsFed ? "fed from" : "fed")}.",
        written.IsFed ? "Write an out." : "Write an in.",
        $"{written.Ports.Device} {Word(kind)}");

    private static Said NotKnown(WrittenPort written, PortKind kind, int number) => new(
        $"{written.User}: whether {written.Ports.Device} has {Word(kind)} {number} is not known, for the stock does not say what ports it has.",
        "Write its ports in the stock.",
        $"{written.Ports.Device}, ports unknown");

    private static Said TooHigh(WrittenPort written, PortKind kind, int number, int count) => new(
        $"{written.User}: {Word(kind)} {number} of {written.Ports.Device} is wanted, which has {count}.",
        count > 0 ? $"Write one of {Word(kind)} 1 to {count}." : "Write another device.",
        $"{written.Ports.Device} {Word(kind)} {number} of {count}");

    private static Said? Mismatch(WrittenPort written, PortKind port, Kind kind)
    {
        var rows = kind.Ports.Where(row => row.Port == port && Signals.IsSound(row.Signal)).ToList();
        return !written.IsFed || written.Takes is not { } takes || rows.Exists(row => row.Signal == takes)
            ? null
            : new(
                $"{written.User}: takes {takes}, and {written.Ports.Device} {Word(port)} gives {rows[0].Signal}.",
                "Put between them what turns one into the other, such as an amplifier.",
                $"{rows[0].Signal} into {takes}");
    }

    private static Case? JudgeInputs(SoundDevice device)
    {
        if (device.Device.FedBy is not { } written || !written.Is(out var ports) || ports.Numbers is not { } numbers || Signals.Count(device.Kind, PortKind.Input) is not { } inputs)
        {
            return null;
        }

        var says = new Said($"{device.Name}: has {inputs} in, and is fed {numbers.Count} signals.", "Write as many as it has inputs.", $"{numbers.Count} into {inputs}");
        return new Case(device.Piece.Address, written.At, numbers.Count > inputs ? Verdict.Fails : Verdict.Holds, says);
    }

    private static IEnumerable<Case> JudgeBefore(StackPlan stack, IReadOnlyList<StackPlan> stacks)
    {
        foreach (var given in new[] { stack.Stack.DelayOf, stack.Stack.FillOf }.OfType<Given<string>>().Where(given => given.IsKnown))
        {
            var names = stacks.SelectMany(other => new[] { other.Stack.Name, other.Name }).Where(name => name != stack.Stack.Name).Distinct(StringComparer.Ordinal).ToList();
            var isKnown = names.Contains(given.Value);
            yield return new Case(stack.Written, given.At, isKnown ? Verdict.Holds : Verdict.Fails, Unknown(stack.Stack.Name, given.Value, names, "stack"));
        }
    }

    private static Said Unknown(string user, string name, IEnumerable<string> names, string what) => Nearest.To(name, names) is { } nearest
        ? new($"{user}: there is no {what} called {name}; did you mean {nearest}?", $"Write {nearest}, or add {name}.", $"{name}, unknown")
        : new($"{user}: there is no {what} called {name}.", $"Write the name of one that there is, or add {name}.", $"{name}, unknown");

    private static Case Of(WrittenPort written, Verdict verdict, Said? says) => new(written.Where, written.At, verdict, says);

    private static string Word(PortKind kind) => kind switch
    {
        PortKind.Input => "in",
        PortKind.Output => "out",
        PortKind.Outlet => "outlet",
        _ => "link",
    };

    internal sealed record Case(Address Where, Mark At, Verdict Verdict, Said? Says) : Judgement(Where, At, Verdict, Doubts.None);
}

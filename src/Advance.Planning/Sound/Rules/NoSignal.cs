using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>sound/no-signal</c></summary>
internal sealed class NoSignal : Rule<NoSignal.Case>
{
    public override string Name => "sound/no-signal";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "The way of the signal to a loudspeaker, a processor or an amplifier does not start at a desk.";

    public override string Why => "It is found when the desk is up and everybody waits for sound.";

    public override string Cures => "Write fed-by for whatever nothing feeds, and to for a stage box that belongs to no desk.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var paths = plan.Drive.DevicePaths.Concat(plan.Drive.Boxes.Select(box => box.Path));
        return paths.Where(path => path.End is not (PathEnd.NoSuchDevice or PathEnd.Loop)).Select(path => CaseOf(path, plan));
    }

    protected override Said Say(Case found)
    {
        var (name, end) = (found.Name, found.Path.End);
        return end switch
        {
            PathEnd.NoDesk => new($"{name}: belongs to no desk, and so nothing comes out of it.", "Write to, and the desk.", $"{name}, no desk"),
            PathEnd.Open => new($"{name}: what feeds it is still open.", "Write fed-by, and the output.", $"{name}, open"),
            PathEnd.WhichOutput => new($"{name}: nobody says from which output it is fed.", "Write fed-by with the numbers of the outputs.", $"{name}, output unknown"),
            _ => new($"{name}: nothing feeds it.", "Write fed-by, and the output.", $"{name}, not fed"),
        };
    }

    // Whatever hangs on one gap has one cause: the finding is about where the gap is.
    private static Case CaseOf(SignalPath path, Plan plan)
    {
        var verdict = path.End switch
        {
            PathEnd.Desk => Verdict.Holds,
            PathEnd.Open or PathEnd.WhichOutput => Verdict.CannotBeJudged,
            _ => Verdict.Fails,
        };
        if (plan.Drive.Boxes.FirstOrDefault(box => box.Box.Piece.Name == path.EndsAt) is { } found)
        {
            var name = found.Box.Position == found.Stack.Chains[0].Boxes[0].Position ? found.Stack.Stack.Name : $"{found.Stack.Stack.Name}, box {found.Box.Position}";
            return new Case(path, name, found.Stack.Written / found.Box.Position, found.Stack.Stack.At, verdict);
        }

        var device = plan.Sound.Devices.First(device => device.Name == path.EndsAt);
        return new Case(path, device.Name, device.Piece.Address, device.Device.At, verdict);
    }

    internal sealed record Case(SignalPath Path, string Name, Address Where, Mark At, Verdict Verdict) : Judgement(Where, At, Verdict, Path.RestsOn);
}

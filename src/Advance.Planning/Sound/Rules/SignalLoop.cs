using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>sound/signal-loop</c></summary>
internal sealed class SignalLoop : Rule<SignalLoop.Case>
{
    public override string Name => "sound/signal-loop";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A signal comes back to a device that it has been through.";

    public override string Why => "A loop howls as soon as its gain is more than one, into whatever hangs on it.";

    public override string Cures => "Feed one of the devices in the loop from somewhere else.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var paths = plan.Drive.DevicePaths.Concat(plan.Drive.Boxes.Select(box => box.Path));
        return paths.Select(path => CaseOf(path, plan));
    }

    protected override Said Say(Case found) => new(
        $"{string.Join(", ", found.Around)}: the signal goes round and round.",
        "Feed one of them from somewhere else.",
        $"{string.Join(", ", found.Around)}");

    // One loop is one finding, whoever is caught in it: it is about the first of its units, by name.
    private static Case CaseOf(SignalPath path, Plan plan)
    {
        if (path.End != PathEnd.Loop)
        {
            return new Case([], Address.Of("sound") / path.EndsAt, Mark.Nowhere, Verdict.Holds);
        }

        // The way back starts and ends at the same unit: up to there it is the loop, and what comes after hangs on it.
        var length = path.Links.TakeWhile(link => link.To.Port.Device != path.EndsAt).Count() + 1;
        IReadOnlyList<string> loop = [.. path.Links.Take(length).Select(link => link.From.Port.Device).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        var device = plan.Sound.Devices.FirstOrDefault(device => device.Name == loop[0]);
        return new Case(loop, Address.Of("sound") / loop[0], device?.Device.At ?? path.Links[0].At, Verdict.Fails);
    }

    internal sealed record Case(IReadOnlyList<string> Around, Address Where, Mark At, Verdict Verdict) : Judgement(Where, At, Verdict, Doubts.None);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>power/wrong-frequency</c></summary>
internal sealed class WrongFrequency : Rule<WrongFrequency.Case>
{
    public override string Name => "power/wrong-frequency";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something takes another frequency than its supply gives, or than any outlet that takes its plug.";

    public override string Why => "Motors run at another speed and pitch, transformers get hot; a change of voltage alone does not help.";

    public override string Cures => "Hire the unit for this frequency, or a frequency converter.";

    public override Publication Source => Publication.Arithmetic;

    // Where the service does not say, only what takes a single frequency raises the question, once for the service.
    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. plan.Power.Unfed.Where(unfed => unfed.Reason == UnfedReason.Frequency).Select(unfed => new Case(unfed.Chain.First, null, Verdict.Fails)),
        .. plan.Power.Circuits.SelectMany(circuit => circuit.Chain.Loads.Select(load => (circuit.Outlet, load)))
            .Where(one => one.load.Takes is { IsKnown: true } && VoltageFit.Hertz(one.Outlet.Supply, one.load.Takes.Value.Value) is not null)
            .Select(one => new Case(one.load, one.Outlet, VoltageFit.Hertz(one.Outlet.Supply, one.load.Takes!.Value.Value) == true ? Verdict.Holds : Verdict.Fails)),
        .. plan.Power.Services.Where(point => point.Supply is { Frequencies.Count: 0 } && point.Loads.Any(IsParticular)).Select(point => new Case(null, point, Verdict.CannotBeJudged)),
    ];

    protected override Said Say(Case found) => (found.Load, found.Point) switch
    {
        (null, { } point) => new($"{point.Name}: nobody knows its frequency, and {point.Loads.First(IsParticular).Name} takes only one.", "Write it in the service's supply.", $"unknown"),
        ({ } load, { } point) => new($"{load.Name} takes {Takes(load)} and gets {point.Supply!.ToString()} on {point.Name}.", "Hire the unit for this frequency, or a frequency converter.", $"{Takes(load)} on {point.Supply!.ToString()}"),
        _ => new($"{found.Load!.Name} takes {Takes(found.Load)}, and no outlet that takes its plug gives that frequency.", "Hire the unit for this frequency, or a frequency converter.", $"{Takes(found.Load)}"),
    };

    private static bool IsParticular(PowerLoad load) => load.Takes is { IsKnown: true } takes && takes.Value.Frequencies.Count == 1;

    private static Words Takes(PowerLoad load) => $"{load.Takes!.Value.Value.ToString()}";

    internal sealed record Case(PowerLoad? Load, SupplyPoint? Point, Verdict Verdict)
        : Judgement((Load?.Address ?? Point!.Address) / "hertz", Load?.At ?? Point!.At, Verdict, Doubts.Of(Load?.Takes?.Doubt).With(Doubts.Of(Point?.Origin?.Supply.Doubt)));
}

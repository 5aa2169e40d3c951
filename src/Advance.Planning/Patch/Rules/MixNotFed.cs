using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/mix-not-fed</c></summary>
internal sealed class MixNotFed : Rule<MixNotFed.Case>
{
    public override string Name => "patch/mix-not-fed";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A mix does not get to what it is heard with: a wedge has no input or nothing that hands the signal on, or a stereo mix goes into one input.";

    public override string Why => "Somebody on stage hears nothing, or half of what was mixed for them.";

    public override string Cures => "Use what has the inputs, ask for one mix each, or write what it is heard with.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Patch.Returns
            .GroupBy(mix => (mix.Act, mix.Row))
            .Where(row => row.All(mix => mix.Port is not null))
            .Select(row => new Case(row.First(), row.Max(mix => Weight(MonitorChain.Of(mix).Verdict)) switch { 0 => Verdict.Holds, 1 => Verdict.CannotBeJudged, _ => Verdict.Fails }));

    protected override Said Say(Case found)
    {
        var (row, with) = (found.Mix.Row, found.Mix.Heard.Count > 0 ? found.Mix.Heard[0].Item : "");
        return found switch
        {
            { Verdict: Verdict.Fails } => new(
                $"Mix {row.Numbers.ToString()}, {row.For}: {found.Mix.Heard.Count} x {with} cannot take it, since the inputs or links are not there.",
                "Use what has the inputs, or ask for one mix each.",
                $"mix {row.Numbers.ToString()}, {found.Mix.Heard.Count} x {with}"),
            { Mix.Heard.Count: 0 } => new(
                $"Mix {row.Numbers.ToString()}, {row.For}: nobody says what it is heard with.",
                "Write with: a wedge or in-ears.",
                $"mix {row.Numbers.ToString()}, with unknown"),
            _ => new(
                $"Mix {row.Numbers.ToString()}, {row.For}: nobody knows whether {found.Mix.Heard.Count} x {with} can take it.",
                "Write the ports of its kind in the stock.",
                $"mix {row.Numbers.ToString()}, ports of {with} unknown"),
        };
    }

    private static int Weight(Verdict verdict) => verdict switch
    {
        Verdict.Holds => 0,
        Verdict.CannotBeJudged => 1,
        _ => 2,
    };

    internal sealed record Case(PatchReturn Mix, Verdict Verdict)
        : Judgement(Mix.Address, Mix.Row.At, Verdict, Doubts.Of(Mix.Row.With?.Doubt));
}

using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/sags</c></summary>
internal sealed class Sags : Rule<Sags.Case>
{
    // Of a span. Common practice, no source.
    private const double Part = 200;

    public override string Name => "rigging/sags";

    public override Severity Severity => Severity.Note;

    public override string Catches => "A truss sags, or bows to the side, by more than a two hundredth of its span.";

    public override string Why => "It bears that, but what hangs in its middle hangs lower than its trim, a screen does not close, and a cloth drags.";

    public override string Cures => "Allow for it in trims and clearances, or one more pick.";

    public override Publication Source => Publication.CommonPractice;

    // Where its maker does not say how stiff it is, nobody asks for the sake of a sag.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        from how in new[] { (Does: "sags", Of: truss.Sag), (Does: "bows", Of: truss.Sideways.Bowed) }
        where how.Of.Value is not null && truss.Span is not null
        select new Case(truss, how.Does, how.Of);

    protected override Said Say(Case found) => found.Does == "sags"
        ? new($"{found.Truss.Name} sags by {found.By.Value!.Value} over a span of {found.Truss.Span!.Value}.", "Allow for it in trims and clearances, or one more pick.", $"{found.By.Value!.Value}")
        : new($"{found.Truss.Name} bows to the side by {found.By.Value!.Value} over a span of {found.Truss.Span!.Value}.", "Allow for it, one more pick, or less that pushes it.", $"{found.By.Value!.Value}");

    internal sealed record Case(TrussPlan Truss, string Does, Figure<UnitsNet.Length> By)
        : Judgement(Truss.Address / Does, Truss.Placed.Truss.At, By.Value!.Value.Meters <= Truss.Span!.Value.Meters / Part ? Verdict.Holds : Verdict.Fails, By.RestsOn);
}

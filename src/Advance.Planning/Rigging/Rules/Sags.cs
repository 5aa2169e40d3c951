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

    public override string Catches => "A truss sags by more than a two hundredth of its span.";

    public override string Why => "It bears that, but what hangs in its middle hangs lower than its trim, a screen does not close, and a cloth drags.";

    public override string Cures => "Allow for it in trims and clearances, or one more pick.";

    public override Publication Source => Publication.CommonPractice;

    // Where its maker does not say how stiff it is, nobody asks for the sake of a sag.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Sag.Value is not null && truss.Span is not null).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name} sags by {found.Truss.Sag.Value!.Value} over a span of {found.Truss.Span!.Value}.", "Allow for it in trims and clearances, or one more pick.", $"{found.Truss.Sag.Value!.Value}");

    internal sealed record Case(TrussPlan Truss)
        : Judgement(Truss.Address / "sags", Truss.Placed.Truss.At, Truss.Sag.Value!.Value.Meters <= Truss.Span!.Value.Meters / Part ? Verdict.Holds : Verdict.Fails, Truss.Sag.RestsOn);
}

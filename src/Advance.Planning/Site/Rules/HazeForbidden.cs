using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>site/haze-forbidden</c></summary>
internal sealed class HazeForbidden : Rule<HazeForbidden.Case>
{
    private static readonly string[] Words = ["none", "no ", "no,", "not ", "forbidden"];

    public override string Name => "site/haze-forbidden";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A hazer or fogger is planned where the venue allows none, or where it has not said yet.";

    public override string Why => "Smoke detectors empty the building and call the fire brigade, and the venue sends the bill.";

    public override string Cures => "Leave it at home, or have the venue switch the detectors to another kind, in writing.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Brief.Venue.Rules.Haze is { } haze
        ? plan.Pieces.Where(piece => piece.Kind?.Role == Role.Hazer).Select(piece => new Case(piece, haze, VerdictOf(haze)))
        : [];

    protected override Said Say(Case found) => found.Haze.Is(out var said)
        ? new($"{found.Piece.Name} is planned; the venue on haze: {said}.", Cures, $"haze: {said}")
        : new($"{found.Piece.Name} is planned; nobody knows whether the venue allows haze.", "Ask the venue.", "haze unknown");

    private static Verdict VerdictOf(Given<string> haze) => !haze.Is(out var said)
        ? Verdict.CannotBeJudged
        : IsNone(said) ? Verdict.Fails : Verdict.Holds;

    private static bool IsNone(string said) => Words.Any(word => said.StartsWith(word, StringComparison.OrdinalIgnoreCase))
        || said.Equals("no", StringComparison.OrdinalIgnoreCase);

    internal sealed record Case(Piece Piece, Given<string> Haze, Verdict Verdict)
        : Judgement(Address.Of("site") / "haze" / Piece.Name, Piece.Why is Need.AskedFor asked ? asked.At : Haze.At, Verdict, Doubts.Of(Haze.Doubt));
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/mixed-hoists</c></summary>
internal sealed class MixedHoists : Rule<MixedHoists.Case>
{
    public override string Name => "rigging/mixed-hoists";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Hoists of several speeds lift one truss.";

    public override string Why => "The faster ones take all of it on the way up.";

    public override string Cures => "Hoists of one kind on one truss.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Picks.Count(pick => pick.Placed.Hoist is not null) > 1).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name} hangs on {string.Join(" and ", found.Kinds)}, which do not run alike.", "Hoists of one kind on one truss.", $"{string.Join(", ", found.Kinds)}");

    private static Verdict Judge(TrussPlan truss) => truss.Picks.Select(pick => pick.Placed.Hoist?.Kind?.Hoist?.Speed?.Or(UnitsNet.Speed.Zero)).OfType<UnitsNet.Speed>().Distinct().Count() > 1 ? Verdict.Fails : Verdict.Holds;

    internal sealed record Case(TrussPlan Truss) : Judgement(Truss.Address / "mixed", Truss.Placed.Truss.At, Judge(Truss), Doubts.None)
    {
        /// <summary>The kinds, each once.</summary>
        public IReadOnlyList<string> Kinds => [.. Truss.Picks.Select(pick => pick.Placed.Hoist?.Item).OfType<string>().Distinct(StringComparer.Ordinal)];
    }
}

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

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from truss in plan.Rigging.Trusses where IsOnSeveral(truss.Picks) select new Case(truss.Name, truss.Address, truss.Placed.Truss.At, truss.Picks),
        .. from hang in plan.Rigging.Hangs
           let picks = hang.Picks.Select(pick => pick.Pick).ToList()
           where IsOnSeveral(picks)
           select new Case(hang.Name, hang.Written, hang.Placed.Hang.At, picks),
    ];

    protected override Said Say(Case found) => new($"{found.Name} hangs on {string.Join(" and ", found.Kinds)}, which do not run alike.", "Hoists of one kind on one truss or hang.", $"{string.Join(", ", found.Kinds)}");

    private static bool IsOnSeveral(IReadOnlyList<PickPlan> picks) => picks.Count(pick => pick.Placed.Hoist is not null) > 1;

    private static Verdict Judge(IReadOnlyList<PickPlan> picks) => picks.Select(pick => pick.Placed.Hoist?.Kind?.Hoist?.Speed?.Or(UnitsNet.Speed.Zero)).OfType<UnitsNet.Speed>().Distinct().Count() > 1 ? Verdict.Fails : Verdict.Holds;

    internal sealed record Case(string Name, Address Of, Mark Written, IReadOnlyList<PickPlan> Picks) : Judgement(Of / "mixed", Written, Judge(Picks), Doubts.None)
    {
        /// <summary>The kinds, each once.</summary>
        public IReadOnlyList<string> Kinds => [.. Picks.Select(pick => pick.Placed.Hoist?.Item).OfType<string>().Distinct(StringComparer.Ordinal)];
    }
}

using System.Numerics;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/truss-nearly-full</c></summary>
internal sealed class TrussNearlyFull : Rule<TrussNearlyFull.Case>
{
    public override string Name => "rigging/truss-nearly-full";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A truss bends or shears nearly as much as its maker allows, level or as uneven as it is reckoned while it moves.";

    public override string Why => "A weight that was a guess, or one more lamp on the day, is then too much.";

    public override string Cures => "One more pick, picks nearer to the loads, less weight, or weights as weighed.";

    public override Publication Source => Publication.CommonPractice;

    // Where it is more, or nobody knows, another rule says so.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        where truss.Study is not null && new TrussOverload.Case(truss).Verdict == Verdict.Holds
        select new Case(truss, plan.Brief.Company.Policies.Rigging.Use);

    protected override Said Say(Case found) => new($"{found.Truss.Name}: {found.Near!}.", "One more pick, picks nearer to the loads, less weight, or weights as weighed.", found.Near!);

    internal sealed record Case(TrussPlan Truss, double Use)
        : Judgement(Truss.Address / "nearly", Truss.Placed.Truss.At, NearOf(Truss, Use) is null ? Verdict.Holds : Verdict.Fails, Truss.RestsOn)
    {
        /// <summary>What is nearly too much, in words; null where nothing is.</summary>
        public Words? Near => NearOf(Truss, Use);

        private static Words? NearOf(TrussPlan truss, double use) =>
            Of("sagging moment", truss.Sagging, use) ?? Of("hogging moment", truss.Hogging, use) ?? Of("shear", truss.Shear, use)
            ?? (truss.Together.Value * 100 > use ? Words.Of($"moment and shear together {UnitsNet.Ratio.FromDecimalFractions(truss.Together.Value!.Value)} of what is allowed") : null);

        private static Words? Of<T>(string what, TrussForce<T> force, double use)
            where T : struct, IComparable<T>, IMultiplyOperators<T, double, T> =>
            NearLimit.Is(force.Worst, force.Allowed, use) ? Words.Of($"{what} {force.Worst.Value!.Value} of {force.Allowed.Value!.Value} ({force.Case})") : null;
    }
}

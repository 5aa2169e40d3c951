using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/snag-load</c></summary>
internal sealed class SnagLoad : Rule<SnagLoad.Case>
{
    public override string Name => "rigging/snag-load";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "When a load catches on something, its hoist can pull more, until its limiter slips, than its point or its truss bears.";

    public override string Why => "A hoist does not feel a snag before its limiter does; the roof does.";

    public override string Cures => "Tell the venue's engineer what the limiter lets through, look all the way while it moves, or a smaller hoist.";

    public override Publication Source => Handbook.RiggingStandards.En14492;

    // A limit that nobody has told is asked for by another rule. All points that it is too much for are one finding, and so are all trusses.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        IEnumerable<Caught> points =
            from point in plan.Rigging.Points
            where point.Snag?.Value is not null && (point.Point.Snag is not null || point.Limit.Value is not null)
            select new Caught(point.Point.Name, point.Snag!, point.Point.Snag is { } once ? Figure.From(once) : point.Limit, "it bears", point.Address / "snag", point.At);
        IEnumerable<Caught> trusses =
            from truss in plan.Rigging.Trusses
            let bears = truss.Placed.Kind?.Truss?.PickLoad
            where bears is not null
            let worst = truss.Picks.Select(pick => PullOf(pick, plan.Brief.Company.Policies.Rigging.Limiter)).OfType<Figure<Mass>>().MaxBy(pull => pull.Value?.Kilograms ?? 0)
            where worst is not null
            select new Caught(truss.Name, worst, Figure.From(bears.Value), "it bears at one pick", truss.Address / "snag", truss.Placed.Truss.At);
        return [.. Together([.. points]), .. Together([.. trusses])];
    }

    protected override Said Say(Case found)
    {
        var (one, others) = (found.Worst, found.All.Count > 1 ? $"; so too {string.Join(", ", found.All.Where(other => other != found.Worst).Select(other => other.On))}" : "");
        return one.Bears.Value is { } bears
            ? new($"{one.On}: when a load catches, up to {one.Pull.Value!.Value} before the limiter slips, and {one.How} {bears}{others}.", Cures, $"{one.Pull.Value!.Value} of {bears}, {found.All.Count}")
            : new($"{one.On}: when a load catches, up to {one.Pull.Value!.Value} before the limiter slips, and nobody knows what it bears then{others}.", Cures, $"{one.Pull.Value!.Value}, {found.All.Count}");
    }

    private static IEnumerable<Case> Together(List<Caught> all)
    {
        var over = all.Where(one => one.Verdict != Verdict.Holds).ToList();
        return [.. all.Except(over).Select(one => new Case([one], one)), .. over.Count == 0 ? [] : new[] { new Case(over, over.MaxBy(one => one.Share)!) }];
    }

    // On the truss without what hangs above it.
    private static Figure<Mass>? PullOf(PickPlan pick, double limiter) => pick.Placed.Hoist?.Kind?.Hoist is not { } hoist || pick.Snag is null ? null
        : Sum.Of($"{pick.Name}, on the truss when it catches", "F = φ · Q", Handbook.RiggingStandards.En14492)
            .Put("φ", Factor(hoist, limiter))
            .Put("Q", Figure.From(hoist.Lifts))
            .Gives((factor, lifts) => factor * lifts);

    private static Figure<double> Factor(Hoist hoist, double policy) => hoist.Limiter is { } given ? Figure.From(given.Select(slips => slips.DecimalFractions)) : Figure.Policy("limiter", policy);

    internal sealed record Caught(string On, Figure<Mass> Pull, Figure<Mass> Bears, string How, Address Place, Domain.Facts.Mark Written)
    {
        /// <summary>Whether it bears that.</summary>
        public Verdict Verdict => Pull.AtMost(Bears);

        /// <summary>How much of it is used; more than anything where nobody knows.</summary>
        public double Share => Pull.Value is { } pull && Bears.Value is { Kilograms: > 0 } bears ? pull.Kilograms / bears.Kilograms : double.MaxValue;
    }

    internal sealed record Case(IReadOnlyList<Caught> All, Caught Worst)
        : Judgement(Worst.Place, Worst.Written, Worst.Verdict, All.Aggregate(Domain.Facts.Doubts.None, (sum, one) => sum.With(one.Pull.RestsOn).With(one.Bears.RestsOn)));
}

using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out what the wind does to what hangs on trusses in the open.</summary>
internal sealed class ClothWorking(Brief brief, StandingSite site)
{
    private Domain.Companies.StandingPolicies Policies => brief.Company.Policies.Standing;

    /// <summary>Each cloth, in the order written: what says what wind sees of it, and what is spread along a truss and does not.</summary>
    /// <param name="trusses">For how high they hang.</param>
    public IEnumerable<ClothPlan> Of(IReadOnlyList<PlacedTruss> trusses) => site.IsOpenAir != true ? [] :
        from load in brief.Gig.Rigging.Dressing
        let kind = load.Item is { } item && item.Is(out var id) ? brief.Stock.Find(id) : null
        let seen = AreaOf(load, kind)
        where seen is not null && seen.Value is not { SquareMeters: <= 0 }
        let truss = trusses.FirstOrDefault(truss => string.Equals(truss.Name, load.Truss, StringComparison.OrdinalIgnoreCase))
        select Of(load, kind, seen, truss);

    private ClothPlan Of(TrussLoad load, Kind? kind, Figure<UnitsNet.Area> area, PlacedTruss? truss)
    {
        var trim = truss?.Trim ?? new Figure<Length>(null, Doubts.None, Reason.Derived.It);
        var gust = site.GustAt(trim);
        var holds = HoldsOf(load, kind);
        var seen = Sum.Of("what the wind finds of it", "f = c · A", En1991.Forces).Put("c", Coefficient(kind)).Put("A", area).Gives((times, face) => times * face);
        var lowered = site.Wind?.Lowered.FirstOrDefault(row => string.Equals(row.What, load.What, StringComparison.OrdinalIgnoreCase));
        var limit = lowered?.From is { } from ? Figure.From(from) : LimitOf(load, holds, seen);
        var stays = gust.AtMost(limit) == Verdict.Holds ? gust : limit;
        var pressure = GustPressure.Of(stays);
        var push = Sum.Of($"{load.What}, wind on it", "F = q · f", RigidBodies.Balance).Put("q", pressure).Put("f", seen).Gives(WindPressure.On);
        var what = load.Count == 1 ? load.What : FormattableString.Invariant($"{load.Count} × {load.What}");
        return new ClothPlan(
            Address.Of("site") / "cloth" / load.Truss / load.What,
            what,
            load.Truss,
            load.At,
            gust,
            push,
            Sum.Of($"{load.What}, swings out", "θ = atan(F / (9.80665 · m))", RigidBodies.Balance).Put("F", push).Put("m", holds).Gives(HungInWind.Swing),
            Sum.Of($"{load.What}, pulls its truss", "T = √(F² + (9.80665 · m)²)", RigidBodies.Balance).Put("F", push).Put("m", holds).Gives(HungInWind.Pull),
            limit)
        {
            Prepare = StandingLimits.Action("gust to make ready at", "standing / prepare", Policies.Prepare, limit),
            Act = StandingLimits.Action("gust to act at", "standing / act", Policies.Act, limit),
            Forecast = site.Forecast(limit, trim),
            Lowered = lowered,
        };
    }

    // As far as it hangs free: what is tied at its foot has its speed written.
    private Figure<Speed> LimitOf(TrussLoad load, Figure<Mass> holds, Figure<UnitsNet.Area> seen) =>
        Sum.Of($"{load.What}, gust that it must be down before", "v = √(2 · 9.80665 · m · tan(θ) / (1.25 · f))", RigidBodies.Balance)
            .Put("m", holds).Put("θ", Figure.Policy("standing / cloth-swing", Policies.ClothSwing)).Put("f", seen)
            .Gives((mass, swing, found) => Speed.FromMetersPerSecond(Math.Sqrt(2 * TipAndSlide.Gravity * mass.Kilograms * Math.Tan(swing.Radians) / (WindPressure.Density * found.SquareMeters))));

    // Null for what is no cloth: something in one place of which nobody says that wind finds it.
    private static Figure<UnitsNet.Area>? AreaOf(TrussLoad load, Kind? kind)
    {
        var each = load.WindArea ?? kind?.Standing?.FrontArea;
        return each is { } given
            ? Sum.Of("what the wind sees", "A = n · a", Publication.Arithmetic).Put("n", Figure.Count(load.Count)).Put("a", Figure.From(given)).Gives((count, area) => count * area)
            : load.Along is null || load.To is not null
                ? new Figure<UnitsNet.Area>(null, Doubts.Of(new Doubt($"rigging / loads / {load.What} / wind-area", load.At, LeftOut: true)), Reason.Derived.It)
                : null;
    }

    private static Figure<double> Coefficient(Kind? kind) => kind?.Standing?.ForceCoefficient is { } said ? Figure.From(said) : new Figure<double>(ForceCoefficients.Of(kind?.Standing?.Shape ?? WindShape.Sheet), Doubts.None, Reason.Derived.It);

    // Light cloth swings further: what nobody weighed counts for less.
    private Figure<Mass> HoldsOf(TrussLoad load, Kind? kind)
    {
        var given = load.Weight ?? kind?.Weight;
        var each = given is { } known ? Figure.From(known) : new Figure<Mass>(null, Doubts.Of(new Doubt($"rigging / loads / {load.What} / weight", load.At, LeftOut: true)), Reason.Derived.It);
        return Sum.Of("weight that holds", "w = n · m · k / 100", Publication.CommonPractice)
            .Put("n", Figure.Count(load.Count)).Put("m", each).Put("k", Figure.Policy("standing / catalogue-share", given?.How == Known.Weighed ? 100 : Policies.CatalogueShare))
            .Gives((count, mass, share) => count * mass * (share / 100));
    }
}

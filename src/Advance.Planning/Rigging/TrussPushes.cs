using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What pushes a truss sideways, to whichever side is worse: in the open the wind on it, on its fixtures, cloths and hangs; everywhere what pulls at it,
/// and hangs that are pulled back. Each as heavy as it pushes, along the truss as it hangs.
/// </summary>
internal sealed class TrussPushes(Brief brief, StandingSite site, TrussLoads loads, IReadOnlyList<ClothPlan> cloths, IReadOnlyList<HangPlan> hangs)
{
    /// <summary>On one truss, in the order of what hangs on it.</summary>
    public IReadOnlyList<CarriedLoad> On(PlacedTruss truss) => [.. Itself(truss), .. Fixtures(truss), .. Dressing(truss), .. Hung(truss)];

    private IEnumerable<CarriedLoad> Itself(PlacedTruss truss) => site.IsOpenAir != true ? [] :
        [new CarriedLoad("wind on the truss", WindOn(truss.Name, truss, truss.Sections), null, truss.Start, truss.End, 0) { Where = Doubts.Of(truss.Truss.Length.Doubt) }];

    private IEnumerable<CarriedLoad> Fixtures(PlacedTruss truss) => site.IsOpenAir != true ? [] :
        from fixture in loads.FixturesOn(truss)
        let load = loads.Of(fixture, truss)
        select load with { What = $"wind on {fixture.Name}", Weight = WindOn(fixture.Name, truss, [fixture.Piece]), How = null };

    private IEnumerable<CarriedLoad> Dressing(PlacedTruss truss)
    {
        foreach (var load in brief.Gig.Rigging.Dressing.Where(load => string.Equals(load.Truss, truss.Name, StringComparison.OrdinalIgnoreCase)))
        {
            var lies = loads.Of(load, truss);
            if (cloths.FirstOrDefault(cloth => cloth.At == load.At) is { } cloth)
            {
                yield return lies with { What = $"wind on {cloth.What}", Weight = AsMass($"wind on {cloth.What}", cloth.Push), How = null };
            }

            if (load.Sideways is { } pull)
            {
                yield return lies with { What = $"pull of {lies.What}", Weight = Times(load.Count, $"pull of {lies.What}", Figure.From(pull)), How = pull.How };
            }
        }
    }

    private IEnumerable<CarriedLoad> Hung(PlacedTruss truss) =>
        from hang in hangs
        from pick in hang.Picks
        where pick.Pick.Placed.Pick.Point.Is(out var name) && string.Equals(name, truss.Name, StringComparison.OrdinalIgnoreCase)
        from push in new[] { (What: "wind on", Push: pick.Pick.Pushed), (What: "pull-back of", Push: pick.Pick.PulledBack?.Pull) }
        where push.Push is not null
        select new CarriedLoad($"{push.What} {pick.Pick.Name}", push.Push, null, truss.Along(pick.Pick.Spot), null, 0) { Where = hang.Stack.RestsOn.With(truss.RestsOn) };

    // From the front, where the wind finds most of it.
    private Figure<Mass> WindOn(string name, PlacedTruss truss, IReadOnlyList<Piece> pieces)
    {
        var working = new PartWorking(brief.Company.Policies.Standing, brief.Stock);
        var pressure = GustPressure.Of(site.GustAt(truss.Trim));
        var push = Sum.Of($"{name}, what the wind pushes", "F = q · Σ fᵢ", En1991.Forces).Put("q", pressure).PutAll("fᵢ", pieces.Select(piece => working.At(piece, truss.Trim).Faces?.Front ?? new Figure<UnitsNet.Area>(null, Doubts.None, Reason.Derived.It)))
            .Gives((press, seen) => WindPressure.On(press, UnitsNet.Area.FromSquareMeters(seen.Values.Sum(one => one.SquareMeters))));
        return AsMass($"{name}, what the wind pushes", push);
    }

    private static Figure<Mass> AsMass(string name, Figure<Force> push) =>
        Sum.Of($"{name}, as a weight", "P = F / 9.80665", Statics.Equilibrium).Put("F", push).Gives(force => Mass.FromKilograms(force.Newtons / TrussStatics.Gravity));

    private static Figure<Mass> Times(int count, string name, Figure<Mass> each) =>
        Sum.Of(name, "P = n · p", Publication.Arithmetic).Put("n", Figure.Count(count)).Put("p", each).Gives((many, one) => one * many);
}

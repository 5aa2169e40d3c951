using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What the wind does to a hang in the open air: it pushes the side that it finds most of, and the hang swings out until weight and push are along its chains.</summary>
/// <param name="Gust">At its hole.</param>
/// <param name="Push">Of the gust.</param>
/// <param name="Swing">Off plumb.</param>
/// <param name="Pull">At its points, all together.</param>
public sealed record HangWind(Figure<Speed> Gust, Figure<Force> Push, Figure<Angle> Swing, Figure<Force> Pull)
{
    internal static HangWind? Of(Brief brief, HangPlan hang)
    {
        var site = StandingSite.Of(brief.Gig, brief.Venue);
        if (site.IsOpenAir != true)
        {
            return null;
        }

        var gust = site.GustAt(hang.PickHeight);
        var pressure = GustPressure.Of(gust);
        var push = Sum.Of($"{hang.Name}, what the wind pushes", "F = q · Σ fᵢ", En1991.Forces).Put("q", pressure).PutAll("fᵢ", Faces(brief, hang))
            .Gives((press, seen) => WindPressure.On(press, UnitsNet.Area.FromSquareMeters(seen.Values.Sum(one => one.SquareMeters))));
        var swing = Sum.Of($"{hang.Name}, how far it swings", "α = atan(F / (9.80665 · W))", Statics.Equilibrium).Put("F", push).Put("W", hang.Weight)
            .Gives(HungInWind.Swing);
        var pull = Sum.Of($"{hang.Name}, what pulls at its points", "T = √(F² + (9.80665 · W)²)", Statics.Equilibrium).Put("F", push).Put("W", hang.Weight)
            .Gives(HungInWind.Pull);
        return new HangWind(gust, push, swing, pull);
    }

    /// <summary>What each pick gets of the push: as much of it as it carries of the weight.</summary>
    internal IReadOnlyList<HangPickPlan> Between(IReadOnlyList<HangPickPlan> picks) =>
    [
        .. picks.Select(pick => pick with
        {
            Pick = pick.Pick with
            {
                Pushed = Sum.Of($"{pick.Pick.Name}, pushed sideways, either way", "H = F · R / (9.80665 · Σ Rᵢ)", Statics.Equilibrium)
                    .Put("F", Push).Put("R", pick.Pick.Level).PutAll("Rᵢ", picks.Select(one => one.Pick.Level))
                    .Gives((force, own, all) => Mass.FromKilograms(force.Newtons / TrussStatics.Gravity * own.Kilograms / all.Values.Sum(one => one.Kilograms))),
            },
        }),
    ];

    // From the side that it finds most of, the same for all boxes.
    private static List<Figure<UnitsNet.Area>> Faces(Brief brief, HangPlan hang)
    {
        var working = new PartWorking(brief.Company.Policies.Standing, brief.Stock);
        var nothing = new Figure<Length>(Length.Zero, Doubts.None, Reason.Derived.It);
        var faces = hang.Stack.Boxes.Select(box => working.Of(box.Piece, nothing).Faces).OfType<WindFaces>().ToList();
        return new[] { faces.ConvertAll(face => face.Front), faces.ConvertAll(face => face.Side), faces.ConvertAll(face => face.Rear) }
            .MaxBy(side => side.Sum(face => face.Value?.SquareMeters ?? double.MaxValue / 1000))!;
    }
}

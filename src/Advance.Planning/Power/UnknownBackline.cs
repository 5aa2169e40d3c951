using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What stands for the things of an act that nobody gave a draw: one load of so many watts for each of them, but for no more of them than
/// there are players. Common practice, no source.
/// </summary>
internal static class UnknownBackline
{
    /// <summary>Its name.</summary>
    public const string Name = "backline not known";

    /// <summary>The load; null for an act whose things are all known, or need no mains.</summary>
    public static PowerLoad? Of(Act act, Brief brief, Ground ground)
    {
        var unknown = act.Backline.Where(thing => thing.Draws is not { IsKnown: true } && (thing.Item is null || brief.Stock.Find(thing.Item) is null)).ToList();
        if (unknown.Count == 0)
        {
            return null;
        }

        var policies = brief.Company.Policies;
        var count = Count(act, unknown);
        var draw = Draw(count, policies.UnknownBackline, LowestVoltage(brief));
        return new PowerLoad(
            Address.Of("stage") / act.Name / Name,
            brief.Gig.Acts.Count > 1 ? $"{act.Name} {Name}" : Name,
            Piece: null,
            PowerUse.Backline,
            draw,
            draw,
            Times("leakage not known", count, Figure.Policy("unknown-leakage", policies.UnknownLeakage)),
            Times("inrush not known", count, Figure.Policy("unknown-inrush", policies.UnknownInrush)),
            Lag: null,
            ThirdHarmonic: null,
            Takes: null,
            policies.BacklinePlug,
            Link: "",
            new Figure<ElectricCurrent>(null, Doubts.None, Reason.Derived.It),
            Middle(unknown.Select(thing => ground.Find(thing.Place)).OfType<Spot>().ToList()),
            Height: 0,
            act.Name,
            IsAssumed: true,
            unknown[0].At);
    }

    // Nobody has said how many players there are: then each thing is somebody's.
    private static Figure<int> Count(Act act, List<Thing> unknown)
    {
        var doubts = unknown.Aggregate(Doubts.None, (sum, thing) => sum.With(Doubts.Of(thing.Draws?.Doubt)));
        var things = new Figure<int>(unknown.Count, doubts, Reason.Derived.It);
        return !act.People.IsKnown
            ? things with { RestsOn = doubts.With(Doubts.Of(act.People.Doubt)) }
            : Sum.Of("backline not known, how many", "n = min(t, p)", Publication.CommonPractice).Put("t", things).Put("p", Figure.From(act.People)).Gives(Math.Min);
    }

    private static Figure<ElectricCurrent> Draw(Figure<int> count, UnitsNet.Power each, Figure<ElectricPotential> voltage) =>
        Sum.Of("backline not known, draw", "I = n · P / U", Publication.CommonPractice)
            .Put("n", count)
            .Put("P", Figure.Policy("unknown-backline", each))
            .Put("U", voltage)
            .Gives((n, watts, volts) => ElectricCurrent.FromAmperes(n * (double)watts.Watts / volts.Volts));

    private static Figure<ElectricCurrent> Times(string name, Figure<int> count, Figure<ElectricCurrent> each) =>
        Sum.Of(name, "I = n · i", Publication.CommonPractice).Put("n", count).Put("i", each).Gives((n, one) => n * one);

    // Whichever supply it will hang on, the lowest voltage gives the largest current.
    private static Figure<ElectricPotential> LowestVoltage(Brief brief)
    {
        var supplies = brief.Venue.Services.Select(service => service.Supply).ToList();
        var doubts = supplies.Aggregate(Doubts.None, (sum, supply) => sum.With(Doubts.Of(supply.Doubt)));
        var volts = supplies.Where(supply => supply.IsKnown).Select(supply => supply.Value.Voltages[0].Least).ToList();
        var at = supplies.Where(supply => supply.IsKnown).Select(supply => supply.At).DefaultIfEmpty(Mark.Nowhere).Min();
        return new Figure<ElectricPotential>(volts.Count == 0 ? null : volts.MinBy(one => one.Volts), doubts, new Reason.Fixed(at));
    }

    private static Spot? Middle(List<Spot> spots) =>
        spots.Count == 0 ? null : new Spot(spots.Average(spot => spot.X), spots.Average(spot => spot.Y));
}

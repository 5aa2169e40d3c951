using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Places;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Takes everything that must come in through the chain of doors, corners and lifts. What four people may lift is turned as it fits; what is
/// heavier stays on its wheels. What one person carries and has no size goes where that person goes.
/// </summary>
public static class AccessDepartment
{
    /// <summary>Every kind of case or loose piece at every narrow place, in the order of the way.</summary>
    public static IReadOnlyList<Passage> Settle(Venue venue, IReadOnlyList<TravellingUnit> units, Policies policies)
    {
        var kinds = units.GroupBy(unit => unit.Item, StringComparer.Ordinal).Select(group => group.ToList()).ToList();
        return
        [
            .. venue.Access.Or([])
                .Select(step => (step, threshold: new Threshold(step, policies.CornerClearance)))
                .Where(place => place.threshold.IsNarrow)
                .SelectMany(place => kinds.Select(alike => At(place.step, place.threshold, alike, policies)).OfType<Passage>()),
        ];
    }

    private static Passage? At(AccessStep step, Threshold threshold, List<TravellingUnit> alike, Policies policies)
    {
        var (first, heaviest) = (alike[0], Heaviest(alike));
        var bulk = Bulk.Of(first.Size);
        if (bulk is null && heaviest.Value <= policies.Lifts.One)
        {
            return null;
        }

        var (verdict, what) = Judge(threshold, first.Size, heaviest, policies);
        var contents = alike.SelectMany(unit => unit.Contents).DistinctBy(packed => packed.Item, StringComparer.Ordinal).ToList();
        var stuck = verdict == Verdict.Fails ? contents.Where(packed => IsStuck(packed, threshold, policies)).Select(packed => packed.Item).ToList() : [];
        return new Passage(
            Address.Of("access") / step.What / first.Item,
            first.Item,
            alike.Sum(unit => unit.Count),
            contents.Count > 0,
            bulk,
            heaviest,
            step,
            verdict,
            what,
            stuck,
            bulk is { } known ? threshold.Longest(known, first.Size) : null,
            bulk is { } grown ? Length.FromMeters(grown.Long) + (policies.CornerClearance * 2) : null,
            threshold.RestsOn.With(Doubts.Of(first.Size?.Doubt)).With(heaviest.RestsOn));
    }

    private static Figure<Mass> Heaviest(List<TravellingUnit> alike) =>
        alike.Find(unit => unit.Gross.Value is null)?.Gross ?? alike.MaxBy(unit => unit.Gross.Value!.Value)!.Gross;

    private static (Verdict Verdict, Hindrance What) Judge(Threshold threshold, Given<Size>? size, Figure<Mass> gross, Policies policies)
    {
        if (Bulk.Of(size) is not { } bulk)
        {
            return (Verdict.CannotBeJudged, Hindrance.Size);
        }

        var (verdict, what) = threshold.Judge(gross.Value <= policies.Lifts.Four ? [.. bulk.Laid] : [bulk]);
        var carried = threshold.Carries(gross);
        return verdict == Verdict.Holds && carried != Verdict.Holds ? (carried, Hindrance.Load) : (verdict, what);
    }

    private static bool IsStuck(Packed packed, Threshold threshold, Policies policies)
    {
        var weight = Weights.OfOne(packed.Item, packed.Kind, policies.WeightMargin);
        var size = packed.Kind?.Travels ?? packed.Kind?.Size;
        return (Bulk.Of(size) is not null || !(weight.Value <= policies.Lifts.One)) && Judge(threshold, size, weight, policies).Verdict != Verdict.Holds;
    }
}

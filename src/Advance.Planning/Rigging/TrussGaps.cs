using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Why nobody can work out what the hoists of a truss carry: what is not known of it, and what is known and cannot be.</summary>
internal static class TrussGaps
{
    /// <summary>The reasons, in a row.</summary>
    /// <param name="truss">One that could not be worked out.</param>
    public static Words Of(TrussPlan truss) =>
        Unknown(truss).Select(what => Words.Of($"{what} is not known")).Concat(Off(truss)).Concat(Together(truss)).DefaultIfEmpty("nothing on it weighs anything").Aggregate((one, next) => $"{one}; {next}");

    private static IEnumerable<string> Unknown(TrussPlan truss)
    {
        if (!truss.Placed.Truss.Length.IsKnown)
        {
            yield return "its length";
        }

        if (truss.Picks.Count == 0)
        {
            yield return "where it is held";
        }

        foreach (var pick in truss.Picks.Where(pick => !pick.Placed.Pick.Along.IsKnown))
        {
            yield return $"the place of {pick.Name}";
        }

        foreach (var load in truss.Loads.Where(load => load.Weight.Value is null || load.From is null))
        {
            yield return load.Weight.Value is null ? $"the weight of {load.What}" : $"the place of {load.What}";
        }

        if (truss.Picks.Count > 2 && truss.Placed.Kind?.Truss?.Bending is not { IsKnown: true })
        {
            yield return "its stiffness in bending";
        }
    }

    private static IEnumerable<Words> Off(TrussPlan truss)
    {
        if (!truss.Placed.Truss.Length.Is(out var length))
        {
            yield break;
        }

        foreach (var pick in truss.Picks)
        {
            if (pick.Placed.Pick.Along.Is(out var along) && (along < Length.Zero || along > length))
            {
                yield return $"{pick.Name} is {along} along it, and it is {length} long";
            }
        }

        foreach (var load in truss.Loads.Where(load => load.From < 0 || load.From > length.Meters || load.To > length.Meters + 1e-9))
        {
            yield return $"{load.What} hangs {Length.FromMeters(load.To ?? load.From!.Value)} along it, and it is {length} long";
        }
    }

    private static IEnumerable<Words> Together(TrussPlan truss)
    {
        foreach (var (one, next) in truss.Picks.Zip(truss.Picks.Skip(1)))
        {
            if (one.Placed.Pick.Along.Is(out var here) && next.Placed.Pick.Along.Is(out var there) && (there - here).Meters < HungBeam.LeastApart)
            {
                yield return $"{one.Name} and {next.Name} hold it in one place";
            }
        }
    }
}

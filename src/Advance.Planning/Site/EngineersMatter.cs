using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Something that these sums are not for.</summary>
/// <param name="Where">The thing.</param>
/// <param name="At">Where it was written.</param>
/// <param name="What">In words, with its name.</param>
/// <param name="Why">What makes it an engineer's matter, in words.</param>
public sealed record EngineersMatter(Address Where, Mark At, string What, string Why)
{
    /// <summary>Every one in a plan.</summary>
    public static IEnumerable<EngineersMatter> In(Plan plan) => [.. Trusses(plan), .. Stands(plan), .. Screens(plan)];

    // What moves over people is told by a rule of its own.
    private static IEnumerable<EngineersMatter> Trusses(Plan plan) =>
        from truss in plan.Brief.Gig.Rigging.Trusses
        where truss.Shape.Length > 0
        select new EngineersMatter(Address.Of("rigging") / truss.Name, truss.At, truss.Name, truss.Shape == "ground support" ? "a truss that stands on the ground" : $"a truss of shape {truss.Shape}");

    // Truss upright as a stand, in wind.
    private static IEnumerable<EngineersMatter> Stands(Plan plan) => plan.Standing.Site.IsOpenAir != true
        ? []
        : from position in plan.Lighting.Positions
          where position.Carrier?.Kind?.Truss is not null && !plan.Brief.Gig.Rigging.Trusses.Any(truss => position.Position.Place.Is(out var place) && place is Domain.Places.Place.AtThing at && string.Equals(at.Name, truss.Name, StringComparison.OrdinalIgnoreCase))
          select new EngineersMatter(Address.Of("stack") / position.Name, position.Position.At, position.Name, "truss that stands in wind");

    // Sheets that stand on each other: a wall of screens.
    private static IEnumerable<EngineersMatter> Screens(Plan plan) =>
        from stack in plan.Sound.Stacks
        where stack.Boxes.Count(box => box.Piece.Kind?.Standing?.Shape == Domain.Stocks.WindShape.Sheet) > 1
        group stack by stack.Written into pair
        select new EngineersMatter(pair.Key, pair.First().Stack.At, pair.First().Stack.Name, "screens that stand on each other");
}

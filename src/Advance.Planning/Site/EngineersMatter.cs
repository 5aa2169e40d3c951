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
    /// <summary>The open question, where nobody knows yet whether it is one.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;

    /// <summary>Whether it is one; false where nobody knows yet.</summary>
    public bool IsCertain { get; init; } = true;

    /// <summary>Every one in a plan.</summary>
    public static IEnumerable<EngineersMatter> In(Plan plan) => [.. Trusses(plan), .. People(plan), .. Structures(plan), .. Roof(plan), .. Stands(plan), .. Screens(plan)];

    // What moves over people is told by a rule of its own.
    private static IEnumerable<EngineersMatter> Trusses(Plan plan) =>
        from truss in plan.Brief.Gig.Rigging.Trusses
        where truss.Shape.Length > 0
        select new EngineersMatter(Address.Of("rigging") / truss.Name, truss.At, truss.Name, truss.Shape == "ground support" ? "a truss that stands on the ground" : $"a truss of shape {truss.Shape}");

    // What holds people, and what is joined to something else, whatever its shape.
    private static IEnumerable<EngineersMatter> People(Plan plan) =>
        from truss in plan.Brief.Gig.Rigging.Trusses
        let place = Address.Of("rigging") / truss.Name
        from matter in Answered(place / "people-on", truss.At, truss.Name, "a truss that holds people", truss.HasPeopleOn).Concat(Joined(place, truss.At, truss.Name, truss.JoinedTo))
        select matter;

    private static IEnumerable<EngineersMatter> Structures(Plan plan) =>
        from structure in plan.Brief.Gig.Rigging.Structures
        let place = Address.Of("rigging") / structure.Name
        let itself = new EngineersMatter(place, structure.At, structure.Name, structure.Kind)
        from matter in Answered(place / "people-on", structure.At, structure.Name, "a structure that holds people", structure.HasPeopleOn).Concat(Joined(place, structure.At, structure.Name, structure.JoinedTo)).Prepend(itself)
        select matter;

    private static IEnumerable<EngineersMatter> Roof(Plan plan) => plan.Rigging.Trusses.Count == 0 ? [] :
    [
        .. Answered(StandingSite.Address / "snow", plan.Brief.Gig.Rigging.Trusses[0].At, "The roof", "a roof that may carry snow and us", plan.Brief.Venue.Hall.HasSnow),
        .. from beam in plan.Rigging.Beams
           where beam.Beam.IsTimber
           select new EngineersMatter(beam.Address / "timber", beam.At, beam.Beam.Name, "a timber beam, which bears less the longer a load hangs and the wetter it is,"),
        .. Answered(StandingSite.Address / "ponding", plan.Brief.Gig.Rigging.Trusses[0].At, "The roof", "a roof that water may stand on", plan.Brief.Venue.Hall.HasPonding),
    ];

    // What nobody asked about is none; an open question is one until it is answered.
    private static IEnumerable<EngineersMatter> Answered(Address where, Mark at, string what, string why, Given<bool>? given) => given is { } asked && (!asked.IsKnown || asked.Value)
        ? [new EngineersMatter(where, at, what, why) { IsCertain = asked.IsKnown, RestsOn = Doubts.Of(asked.Doubt) }]
        : [];

    private static IEnumerable<EngineersMatter> Joined(Address where, Mark at, string what, Given<string>? to) => to is { } said
        ? [new EngineersMatter(where / "joined-to", at, what, said.Is(out var other) ? $"joined to {other}" : "joined to nobody knows what") { RestsOn = Doubts.Of(said.Doubt), IsCertain = said.IsKnown }]
        : [];

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

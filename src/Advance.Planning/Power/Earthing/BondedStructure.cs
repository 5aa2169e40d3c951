using Advance.Domain.Facts;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Metal that electrical things stand on or hang from.</summary>
/// <param name="Name">On paper.</param>
/// <param name="Names">What a bond may call it.</param>
/// <param name="At">Where it was asked for.</param>
internal sealed record BondedStructure(string Name, IReadOnlyList<string> Names, Mark At)
{
    /// <summary>
    /// Decks and beams with electrical things on them. A deck that is built of decks has metal frames, and so has whatever a stage in the open stands
    /// on; a pipe or a truss is what has a length. What is in the house, indoors, is the house's.
    /// </summary>
    public static IReadOnlyList<BondedStructure> Of(Plan plan)
    {
        var isOutdoor = plan.Power.ServicesInUse.Any(point => point.Service!.IsOutdoor is { IsKnown: true, Value: true });
        return [.. Decks(plan, isOutdoor), .. Beams(plan, isOutdoor)];
    }

    /// <summary>Whether a bond names it, alone or in a list with commas.</summary>
    public bool IsIn(BondRow bond) => bond.Structure.Split(',', StringSplitOptions.TrimEntries).Any(part => Names.Contains(part, StringComparer.OrdinalIgnoreCase));

    private static IEnumerable<BondedStructure> Decks(Plan plan, bool isOutdoor)
    {
        if (plan.Stage.Stages is [{ } stage, ..] && (stage.Decks is not null || (isOutdoor && stage.Height.Is(out var height) && height.Height.Meters > 0))
            && plan.Power.Circuits.SelectMany(circuit => circuit.Chain.Loads).Any(load => load.Spot is { } spot && IsOn(stage, spot)))
        {
            yield return new BondedStructure("the deck", [stage.Name, "deck", "the deck", "stage"], stage.At);
        }
    }

    private static IEnumerable<BondedStructure> Beams(Plan plan, bool isOutdoor)
    {
        var carrying = plan.Lighting.Fixtures.Where(fixture => fixture.Piece.Kind?.Mains is not null).Select(fixture => fixture.Position?.Address).ToHashSet();
        return plan.Lighting.Positions
            .Where(position => position.Position.Length is not null && (position.Carrier is not null || isOutdoor) && carrying.Contains(position.Address))
            .Select(position => new BondedStructure(position.Name, [position.Name, position.Position.Name, "trusses"], position.Position.At));
    }

    private static bool IsOn(Stage stage, Spot spot) => stage.Size.Is(out var size)
        && Math.Abs(spot.X) <= size.Width.Meters / 2 && spot.Y >= 0 && spot.Y <= size.Depth.Meters;
}

using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Drawings;

/// <summary>
/// The stage to scale, seen from above, with the audience at the foot: as one act finds it, or what stands there for all of them. What several
/// acts bring is never drawn at once, since it never stands there at once. Loudspeakers that hang over it are dashed.
/// </summary>
internal static class StagePlotDrawing
{
    // Two microphones this close, in metres, are one place with one label.
    private const double SamePlace = 0.4;

    // What stands further off the deck than this, in metres, is told in words: the plot is of the stage.
    private const double Margin = 2.2;

    // What hangs higher than this, in metres, is over everybody's head.
    private const double Overhead = 2.5;

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stage">Which stage.</param>
    /// <param name="act">Name of one act; null for what stands there whoever plays.</param>
    public static Scene Draw(Plan plan, Stage stage, string? act)
    {
        var near = Things(plan, act).Where(thing => IsNear(thing.Spot, stage)).ToList();
        var things = near.DistinctBy(thing => thing.Spot).ToList();
        var inside = near.Except(things).ToLookup(thing => thing.Spot, thing => thing.Name);
        var lines = plan.Patch.Lines.Where(line => line.Act is null || line.Act == act).ToList();
        var atThings = lines.ToLookup(line => NameOfThing(line) is { } name ? name : "", StringComparer.OrdinalIgnoreCase);
        return new Scene(
            $"Stage plot of {act ?? plan.Brief.Gig.Title}, seen from above with the audience at the foot",
            [
                .. DeckDrawing.Layers(stage, [.. things, .. Hangs(plan).Select(hang => hang.Placed)], plan.Brief.Company.Units),
                new Layer("things", [.. things.Select(thing => PlotSymbols.Of(thing, LabelOf(thing, plan, inside[thing.Spot], atThings[thing.Name])))]),
                new Layer("people", [.. Places(lines.Where(line => !near.Exists(thing => IsAt(line, thing)) && IsNear(line.Spot, stage)))]),
                new Layer("wedges", [.. Wedges(plan, stage, act)]),
                new Layer("hangs", [.. Hangs(plan).Where(hang => IsNear(hang.Placed.Spot, stage)).Select(hang => PlotSymbols.Of(hang.Placed, LabelOf(hang.Hang)))]),
            ]);
    }

    /// <summary>What belongs to the gig but stands too far off to be drawn; for an act, without what the others bring.</summary>
    public static IReadOnlyList<Placed> FurtherOut(Plan plan, Stage stage, string? act) =>
        [.. Everything(plan).Concat(Hangs(plan).Select(hang => hang.Placed)).Where(thing => !IsNear(thing.Spot, stage) && (thing.Act is null || act is null || thing.Act == act))];

    private static IEnumerable<Placed> Things(Plan plan, string? act) =>
        Everything(plan).Where(thing => (thing.Act is null || thing.Act == act) && !(act is not null && plan.Brief.Gig.Acts.Count > 1 && IsOverhead(thing, plan)));

    // Lights that hang over the players stand on the plot of the whole stage; on that of one of several acts they would only hide who stands there.
    private static bool IsOverhead(Placed thing, Plan plan) => plan.Brief.Gig.Lighting.Positions.Any(position =>
        position.Item is null
        && position.Trim is { } trim && trim.Is(out var height) && height.Height.Meters > Overhead
        && plan.Lighting.Things.Contains(thing)
        && Mirrored.Each(position.Name, position.Sides).Any(one => one.Name == thing.Name));

    private static IEnumerable<Placed> Everything(Plan plan) =>
        plan.Stage.Things.Concat(plan.Sound.Things).Concat(plan.Power.Things).Concat(plan.Lighting.Things);

    // As its top box covers the floor, turned as it aims.
    private static IEnumerable<(HangPlan Hang, Placed Placed)> Hangs(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.Stack.Spot is not null
        let covers = Footprint.Of(hang.Stack.Boxes.Count > 0 ? hang.Stack.Boxes[0].Piece.Kind : null)
        select (hang, new Placed(hang.Address, hang.Name, Look.Hang, hang.Stack.Spot!.Value, covers, hang.Stack.Turn, null, hang.Stack.RestsOn));

    private static bool IsNear(Spot? spot, Stage stage) =>
        spot is { } at && stage.Size.Is(out var size)
        && Math.Abs(at.X) <= (size.Width.Meters / 2) + Margin
        && at.Y >= -Margin
        && at.Y <= size.Depth.Meters + Margin;

    private static string? NameOfThing(PatchLine line) =>
        line.Row.Place is { } place && place.Is(out var known) && known is Place.AtThing thing ? thing.Name : null;

    private static bool IsAt(PatchLine line, Placed thing) =>
        string.Equals(NameOfThing(line), thing.Name, StringComparison.OrdinalIgnoreCase);

    // What stands in the middle of another thing, as a stage box in its rack, is named with it.
    private static Label LabelOf(Placed thing, Plan plan, IEnumerable<string> inside, IEnumerable<PatchLine> lines)
    {
        var second = thing.Look switch
        {
            Look.Stack => Boxes(plan.Sound.Stacks.FirstOrDefault(stack => stack.Address == thing.Address)),
            Look.KeepClear => $"keep {Speech.Of(plan.Brief.Company.Units).Say(Length.FromMeters(thing.Covers.Width))} clear",
            _ => string.Join(" · ", ((IEnumerable<string>)[string.Join(", ", inside), ChannelWords.Of(lines.Select(line => line.Channel))]).Where(part => part.Length > 0)),
        };
        return Label(thing.Name, second);
    }

    // What stands chooses its place first.
    private static Label LabelOf(HangPlan hang) => Label(hang.Name, $"hangs, {Boxes(hang.Stack)}") with { Rank = -1 };

    private static Label Label(string name, string second) =>
        new(second.Length > 0 ? [new LabelLine(name), new LabelLine(second, TextStyle.Quiet)] : [new LabelLine(name)]);

    private static string Boxes(StackPlan? stack) =>
        string.Join(" + ", (stack?.Boxes ?? []).GroupBy(box => box.Piece.Item, StringComparer.Ordinal)
            .Select(group => group.Count() > 1 ? $"{group.Count()} {group.Key}" : group.Key));

    // Lines that stand on one spot share a symbol and a label.
    private static IEnumerable<Symbol> Places(IEnumerable<PatchLine> lines)
    {
        var places = new List<List<PatchLine>>();
        foreach (var line in lines)
        {
            var place = places.Find(known => IsSamePlace(known[0].Spot!.Value, line.Spot!.Value));
            if (place is null)
            {
                places.Add([line]);
            }
            else
            {
                place.Add(line);
            }
        }

        foreach (var place in places)
        {
            var names = place.Select(line => line.Row.Source).Distinct(StringComparer.Ordinal).ToList();
            var name = names.Count > 2 ? $"{names[0]}, {names[1]} + {names.Count - 2}" : string.Join(", ", names);
            yield return PlotSymbols.Person(
                place[0].Address.Text, place[0].Spot!.Value, Label(name, ChannelWords.Of(place.Select(line => line.Channel))));
        }
    }

    private static bool IsSamePlace(Spot a, Spot b) => Math.Abs(a.X - b.X) <= SamePlace && Math.Abs(a.Y - b.Y) <= SamePlace;

    private static IEnumerable<Symbol> Wedges(Plan plan, Stage stage, string? act) =>
        from heard in plan.Patch.Pieces
        where heard.Kind?.Loudspeaker is not null && IsNear(heard.Spot, stage)
        let mix = plan.Patch.Returns.FirstOrDefault(mix => heard.Address.Text.StartsWith(mix.Address.Text + "/", StringComparison.Ordinal))
        where mix is not null && mix.Act == act
        select PlotSymbols.Wedge(heard.Address.Text, heard.Spot!.Value, mix.Row.Numbers.ToString());
}

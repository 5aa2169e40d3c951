using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>site/blocks-way</c></summary>
internal sealed class BlocksWay : Rule<BlocksWay.Case>
{
    public override string Name => "site/blocks-way";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Something stands in an exit, before a hydrant or in a lane that the venue wants clear.";

    public override string Why => "In smoke nobody finds a way round it.";

    public override string Cures => "Move it, or have the venue show another way out.";

    public override Publication Source { get; } = new("fire safety law of the place; the venue's escape plan", "", "", Standing.CommonPractice);

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var areas = plan.Stage.Things.Where(thing => thing.Look == Look.KeepClear).ToList();
        var things = plan.Stage.Things.Where(thing => thing.Look != Look.KeepClear)
            .Concat(plan.Sound.Things).Concat(plan.Lighting.Things).Concat(plan.Power.Things).Concat(Decks(plan)).ToList();
        return plan.Brief.Venue.KeepClear.SelectMany(clear => OfArea(clear, areas, things, plan));
    }

    protected override Said Say(Case found) => found.Thing is { } thing
        ? new(
            $"{thing.Name} stands in {found.Clear.What}, which must stay clear{Width(found.Clear)}.",
            Cures,
            $"{thing.Name} at {Length.FromMeters(thing.Spot.X)}, {Length.FromMeters(thing.Spot.Y)}")
        : new($"Nobody knows where {found.Clear.What} is, so whether it stays clear cannot be judged.", "Ask the venue where it is.", "place unknown");

    // Where nothing stands yet, nothing stands in the way.
    private static IEnumerable<Case> OfArea(KeepClear clear, List<Placed> areas, List<Placed> things, Plan plan)
    {
        var where = Address.Of("site") / clear.What;
        if (areas.Find(placed => placed.Name == clear.What) is not { } area)
        {
            return things.Count == 0 ? [] : [new Case(where, clear, null, Verdict.CannotBeJudged, clear.At, Doubts.Of(clear.Place.Doubt))];
        }

        return things.Select(thing => new Case(
            where / thing.Name,
            clear,
            thing,
            Of(area).Overlaps(Of(thing)) ? Verdict.Fails : Verdict.Holds,
            MarkOf(thing, clear, plan),
            area.RestsOn.With(thing.RestsOn)));
    }

    private static IEnumerable<Placed> Decks(Plan plan) => plan.Stage.Stages.Where(stage => stage.Size.IsKnown).Take(1).Select(stage =>
    {
        var (width, depth) = (stage.Size.Value.Width.Meters, stage.Size.Value.Depth.Meters);
        return new Placed(Address.Of("stage") / stage.Name, "the deck", Look.Area, new Spot(0, depth / 2), new Footprint(width, depth), 0, null, Doubts.Of(stage.Size.Doubt));
    });

    private static FloorArea Of(Placed thing) => new(thing.Spot, thing.Covers, thing.Turn);

    private static Mark MarkOf(Placed thing, KeepClear clear, Plan plan) =>
        plan.Pieces.Where(piece => piece.Address == thing.Address || piece.Address.Text.StartsWith(thing.Address.Text + "/", StringComparison.Ordinal))
            .Select(piece => piece.Why).OfType<Need.AskedFor>().Select(need => need.At).FirstOrDefault(clear.At);

    private static Domain.Wording.Words Width(KeepClear clear) =>
        clear.Wide is { IsKnown: true } wide ? Domain.Wording.Words.Of($", {wide.Value} wide") : Domain.Wording.Words.FromString("");

    internal sealed record Case(Address Where, KeepClear Clear, Placed? Thing, Verdict Verdict, Mark At, Doubts RestsOn)
        : Judgement(Where, At, Verdict, RestsOn);
}

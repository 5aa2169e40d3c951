using Advance.Domain.Stocks;
using Advance.Reading.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Stocks;

/// <summary>What only truss, hoists and parts that bear have.</summary>
internal static class RiggingKindShapes
{
    private static readonly Shape<Mass> Load = Written.As(Quantities.Load);

    /// <summary>Which way up a truss of three chords hangs.</summary>
    public static readonly Shape<Apex> Apexes = Written.OneOf("apex", "which way up a truss hangs", ("up", Apex.Up), ("down", Apex.Down));

    /// <summary>Which chords a pick holds.</summary>
    public static readonly Shape<HeldChords> Chords = Written.OneOf("held-chords", "which chords a pick holds", ("all", HeldChords.All), ("lower", HeldChords.Lower), ("upper", HeldChords.Upper));

    private static readonly RecordShape<HitchRow> Hitch = new("hitch-rating", "What a sling is rated for when it is laid in one way.", keys =>
    {
        var hitch = keys.Needed("hitch", SlingHitchShape.It, "How it is laid.");
        var rating = keys.Needed("rating", Load, "Laid so.");
        return row => new HitchRow(hitch(row), rating(row));
    });

    private static readonly RecordShape<SpanRow> Span = new("span", "What a truss on two supports carries over one span.", keys =>
    {
        var span = keys.Needed("span", Written.Length, "Between the supports.");
        var uniform = keys.Open("uniform", Load, "Spread evenly, all together.");
        var centre = keys.Open("centre", Load, "In the middle.");
        return row => new SpanRow(span(row), uniform(row) is { IsKnown: true } spread ? spread.Value : null, centre(row) is { IsKnown: true } middle ? middle.Value : null);
    });

    public static readonly RecordShape<Truss> Truss = new("truss", "What only a section of truss has, by its maker.", keys =>
    {
        var length = keys.Asked("length", Written.Length, "Of one section, made up.");
        var chords = keys.Defaulted("chords", Written.Between("chords", 2, 4), 4, "How many chords it has.", "4");
        var table = keys.Any("spans", Written.Table(Span), "What it carries by span, where its maker gives that.");
        var bending = keys.Open("bending-stiffness", Written.As(Quantities.BendingStiffness), "EI, up and down.");
        var across = keys.Open("sideways-stiffness", Written.As(Quantities.BendingStiffness), "EI, to the sides.");
        var shearing = keys.Open("shear-stiffness", Written.As(Quantities.Force), "GA; without it the truss is taken as stiff in shear.");
        var moment = keys.Open("moment", Written.As(Quantities.Moment), "The largest that makes it sag.");
        var hogging = keys.Open("hogging-moment", Written.As(Quantities.Moment), "The largest over a pick, where that is not the same; of three chords it never is.");
        var adds = keys.Defaulted(
            "moment-and-shear",
            Written.OneOf("moment-and-shear", "how moment and shear add up", ("added", MomentAndShear.Added), ("squared", MomentAndShear.Squared), ("apart", MomentAndShear.Apart)),
            MomentAndShear.Added,
            "How they add up in one place by its maker, each as a part of what is allowed.",
            "added");
        var apex = keys.Open("apex", Apexes, "Of three chords, which way up its figures are for.");
        var held = keys.Open("held-by", Chords, "Which chords its picks must hold for its figures.");
        var shear = keys.Open("shear", Written.As(Quantities.Force), "The largest shear.");
        var sideways = keys.Open("sideways-moment", Written.As(Quantities.Moment), "The largest sideways, with nothing hanging on it.");
        var pressed = keys.Open("pressed", Written.As(Quantities.Force), "The most that may press it from end to end, with nothing hanging on it.");
        var node = keys.Open("node-load", Load, "The most that may hang on one node.");
        var between = keys.Open("between-nodes", Load, "The most that may hang in one place between two nodes; without it as the company says.");
        var pick = keys.Open("pick-load", Load, "The most that one pick may take.");
        var nodes = keys.Open("nodes", Written.Length, "From node to node.");
        var width = keys.Open("width", Written.Length, "Between its chords, across.");
        var used = keys.Defaulted("for-used", Written.YesNo, false, "Whether its figures allow for wear already; else they are taken times 0.85.", "no");
        return row => new Truss(length(row), chords(row), table(row))
        {
            Bending = bending(row),
            SidewaysBending = across(row),
            Adds = adds(row),
            Apex = apex(row),
            HeldBy = held(row),
            ShearStiffness = shearing(row),
            Moment = moment(row),
            Hogging = hogging(row),
            Shear = shear(row),
            Sideways = sideways(row),
            Pressed = pressed(row),
            NodeLoad = node(row),
            BetweenNodes = between(row),
            PickLoad = pick(row),
            Nodes = nodes(row),
            Width = width(row),
            IsForUsed = used(row),
        };
    });

    public static readonly RecordShape<Hoist> Hoist = new("hoist", "What only a chain hoist has.", keys =>
    {
        var lifts = keys.Asked("lifts", Load, "With nobody below.");
        var holds = keys.Open("holds", Load, "At rest over people; left out where it may not.");
        var moves = keys.Open("moves", Load, "Moving over people; left out where it may not.");
        var chain = keys.Open("chain", Written.As(Quantities.WeightPerLength), "Of its chain.");
        var chainLength = keys.Open("chain-length", Written.Length, "How much chain is on it.");
        var falls = keys.Defaulted("falls", Written.Between("falls", 1, 2), 1, "How many falls of chain bear the hook.", "1");
        var link = keys.Open("link", Written.Length, "From one link to the next.");
        var speed = keys.Open("speed", Written.As(Quantities.Speed), "How fast it goes.");
        var headroom = keys.Open("headroom", Written.Length, "From hook to hook, run right up.");
        var brakes = keys.Open("brakes", Written.Between("brakes", 1, 2), "How many brakes it has that each hold all it lifts.");
        var cell = keys.Defaulted("load-cell", Written.YesNo, false, "Whether it has one.", "no");
        var limiter = keys.Open("limiter", Written.Percentage, "At how much of what it lifts its limiter slips.");
        return row => new Hoist(lifts(row), holds(row), moves(row))
        {
            Chain = chain(row),
            ChainLength = chainLength(row),
            Falls = falls(row),
            Link = link(row),
            Speed = speed(row),
            Headroom = headroom(row),
            Brakes = brakes(row),
            HasLoadCell = cell(row),
            Limiter = limiter(row),
        };
    });

    public static readonly RecordShape<LiftingGear> Lifting = new("lifting", "Of a part that bears, what it bears.", keys =>
    {
        var made = keys.Needed(
            "made",
            Written.OneOf(
                "lifting-kind",
                "what a part that bears is",
                ("roundsling", LiftingKind.Roundsling),
                ("steel", LiftingKind.Steel),
                ("chain", LiftingKind.Chain),
                ("shackle", LiftingKind.Shackle),
                ("clamp", LiftingKind.Clamp),
                ("bond", LiftingKind.Bond),
                ("eye", LiftingKind.Eye),
                ("spreader", LiftingKind.Spreader)),
            "What it is.");
        var rating = keys.Asked("rating", Load, "Pulled straight.");
        var length = keys.Open("length", Written.Length, "Made up.");
        var stretch = keys.Open("stretch", Written.Percentage, "By how much at its rating.");
        var step = keys.Open("step", Written.Length, "In steps of how much it is made shorter: a chain by its links.");
        var marked = keys.Open("marked-by", Written.OneOf("marked-by", "whose rules a part is marked by", ("EN", MarkedBy.En), ("ASME", MarkedBy.Asme)), "By the rules of which region it is rated, marked and coloured.");
        var hitches = keys.Any("by-hitch", Written.Table(Hitch), "What its label says it bears laid in other ways.");
        var breaks = keys.Optional("breaks-at", Written.Between("breaks-at", 2, 20), "How many times its rating.");
        return row => new LiftingGear(made(row), rating(row)) { Length = length(row), Stretch = stretch(row), Step = step(row), MarkedBy = marked(row), ByHitch = hitches(row), BreaksAt = breaks(row) is > 0 and var times ? times : null };
    });
}

using Advance.Domain.Venues;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>The wind that things stand up to, and who acts on it.</summary>
internal static class WindShapes
{
    private static readonly Shape<Terrain> Terrains = Written.OneOf(
        "terrain",
        "what the wind comes over",
        ("open country", Terrain.Open),
        ("sea", Terrain.Sea),
        ("flat", Terrain.Flat),
        ("suburb", Terrain.Suburb),
        ("town", Terrain.Town));

    private static readonly RecordShape<LoweredRow> Lowered = new("lowered", "Something that is lowered or taken down in wind.", keys =>
    {
        var what = keys.Needed("what", Written.Text, "A stack, a position or a thing by its name, or a cloth in words.");
        var from = keys.Open("from", Written.As(Quantities.Speed), "The gust from which it must be down; without it that follows from what it stands.");
        var takes = keys.Asked("takes", Written.Duration, "How long that takes.");
        var by = keys.Open("by", Written.Text, "Who does it.");
        return row => new LoweredRow(what(row), from(row), takes(row), by(row), row.At);
    });

    public static readonly RecordShape<Wind> It = new("wind", "The wind that things stand up to, and who acts on it.", keys =>
    {
        var gust = keys.Open("gust", Written.As(Quantities.Speed), "The gust of 3 s up to which everything stands as it is.");
        var height = keys.Open("height", Written.Length, "Above the ground at which that gust is; without it at the height of each thing.");
        var terrain = keys.Open("terrain", Terrains, "What the wind comes over.");
        var measuredBy = keys.Open("measured-by", Written.Text, "Who reads the meter.");
        var meter = keys.Open("meter", Written.Text, "Where the anemometer is.");
        var decidedBy = keys.Open("decided-by", Written.Text, "Who says that things come down.");
        var lowered = keys.Any("lowered", Written.Table(Lowered), "What comes down in wind.");
        return row => new Wind(gust(row), height(row), terrain(row), measuredBy(row), meter(row), decidedBy(row), lowered(row), row.At);
    });
}

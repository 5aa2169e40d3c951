using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>Collects what is drawn in plan view. What has no known spot is not drawn; it stands in its list all the same.</summary>
/// <param name="ground">Where places are found.</param>
public sealed class Drawn(Ground ground)
{
    private readonly List<Placed> things = [];

    /// <summary>What was placed, in order.</summary>
    public IReadOnlyList<Placed> Things => things;

    /// <summary>The ground that it all stands on.</summary>
    public Ground Ground => ground;

    /// <summary>Where a place is; null where that is unknown.</summary>
    public Spot? Find(Given<Place>? place, Side? side = null) => ground.Find(place, side);

    /// <summary>Adds a thing if its place is known.</summary>
    public void Add(
        Address address, string name, Look look, Given<Place>? place, Footprint covers, string? act = null, Side? side = null, double turn = 0)
    {
        if (place is { } given && Find(given, side) is { } spot)
        {
            var height = ground.HeightAt(spot);
            things.Add(new Placed(address, name, look, spot, covers, turn, act, Doubts.Of(given.Doubt))
            {
                On = ground.On(spot),
                Base = height with { RestsOn = height.RestsOn.With(Doubts.Of(given.Doubt)) },
                At = given.At,
            });
        }
    }
}

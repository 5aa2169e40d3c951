using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

public sealed class StageTests
{
    [Fact]
    public void Two_things_of_one_name_are_drawn_under_two_addresses()
    {
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Around = [Table(1), Table(2)] }));
        Assert.Equal(2, plan.Stage.Things.Select(thing => thing.Address).Distinct().Count());
        Assert.Equal(plan.Stage.Pieces.Select(piece => piece.Address), plan.Stage.Things.Select(thing => thing.Address));
    }

    private static Thing Table(double upstage)
    {
        var place = new Place.Measured(Length.Zero, null, Length.FromMeters(upstage), null);
        return new Thing("table", null, Given.Of<Place>(place, Gigs.Here), null, null, null, "", Gigs.Here);
    }
}

using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>What runs in which show state. The shares are common practice, no source.</summary>
public sealed class StateTests
{
    private static readonly Moment Five = Moment.At(17, 0);
    private static readonly Moment Eight = Moment.At(20, 0);

    [Theory]
    [InlineData(PowerUse.Monitor, ShowState.Show, false)]
    [InlineData(PowerUse.Monitor, ShowState.SoundCheck, false)]
    [InlineData(PowerUse.Monitor, ShowState.Changeover, true)]
    [InlineData(PowerUse.Backline, ShowState.Build, true)]
    [InlineData(PowerUse.Loudspeaker, ShowState.Changeover, false)]
    [InlineData(PowerUse.Loudspeaker, ShowState.Night, true)]
    [InlineData(PowerUse.Sound, ShowState.Night, true)]
    [InlineData(PowerUse.Lighting, ShowState.Night, false)]
    [InlineData(PowerUse.Other, ShowState.Night, false)]
    public void A_load_is_idle_or_it_is_on(PowerUse use, ShowState state, bool isIdle) =>
        Assert.Equal(isIdle ? 10 : null, StateShares.Of(use, state, Policies.Default)?.Value);

    [Fact]
    public void Others_run_in_the_states_that_their_time_overlaps()
    {
        var draws = Draws((ShowState.Show, Eight, Moment.At(22, 0)), (ShowState.Changeover, Moment.At(18, 0), Eight), (ShowState.Changeover, Moment.At(22, 0), Moment.At(23, 0)));
        Assert.False(draws.Runs(Urn(Five, Eight), ShowState.Show));
        Assert.True(draws.Runs(Urn(Five, Eight), ShowState.Changeover));
        Assert.False(draws.Runs(Urn(Moment.At(20, 30), Moment.At(21, 0)), ShowState.Changeover));
    }

    [Fact]
    public void Others_run_in_a_state_that_nobody_gave_times_for_and_when_their_own_is_open()
    {
        var draws = Draws((ShowState.Show, Eight, Moment.At(22, 0)));
        Assert.True(draws.Runs(Urn(Five, Eight), ShowState.Night));
        Assert.True(draws.Runs(new OtherLoad("urn", PowerGigs.Amperes(13), null, Gigs.Here), ShowState.Show));
        Assert.True(draws.Runs(new OtherLoad("urn", PowerGigs.Amperes(13), Given.Unknown<MomentRange>(Gigs.Here, new Doubt("time", Gigs.Here)), Gigs.Here), ShowState.Show));
    }

    [Fact]
    public void A_state_one_of_whose_times_is_open_may_be_at_any_time()
    {
        var open = new ShowStateRow(ShowState.Show, Given.Unknown<MomentRange>(Gigs.Here, new Doubt("show-states / time", Gigs.Here)), Gigs.Here);
        var draws = new StateDraw(Policies.Default, [Row(ShowState.Show, Eight, Moment.At(22, 0)), open]);
        Assert.True(draws.Runs(Urn(Five, Eight), ShowState.Show));
        Assert.Single(draws.Of(Urn(Five, Eight), ShowState.Show).RestsOn);
    }

    [Fact]
    public void The_worst_state_is_named_and_holds_what_runs_in_it()
    {
        var brief = PowerGigs.Of([(2, 0, 0)], [0], services: 1, strangers: 0);
        var service = PowerGigs.Service("0", 0) with { SharedWith = [Urn(Five, Eight)] };
        brief = brief with { Venue = brief.Venue with { Services = [service] }, Gig = brief.Gig with { ShowStates = [.. Rows] } };
        var use = Planner.Plan(brief).Power.Services[0].Legs[0];
        Assert.Equal(ShowState.Changeover, use.State);
        Assert.Equal(15, use.InUse.Value!.Value.Amperes, 1e-9);
        Assert.Equal(2, use.InStates[0].Value!.Value.Amperes, 1e-9);
    }

    private static IEnumerable<ShowStateRow> Rows => StateShares.States.Select(state => state == ShowState.Changeover ? Row(state, Five, Eight) : Row(state, Eight, Moment.At(22, 0)));

    private static StateDraw Draws(params (ShowState State, Moment From, Moment To)[] rows) => new(Policies.Default, [.. rows.Select(row => Row(row.State, row.From, row.To))]);

    private static ShowStateRow Row(ShowState state, Moment from, Moment to) => new(state, Given.Of(new MomentRange(from, to), Gigs.Here), Gigs.Here);

    private static OtherLoad Urn(Moment from, Moment to) => new("urn", PowerGigs.Amperes(13), Given.Of(new MomentRange(from, to), Gigs.Here), Gigs.Here);
}

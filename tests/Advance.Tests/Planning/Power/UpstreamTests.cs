using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>Services that hang on one limit together.</summary>
public sealed class UpstreamTests
{
    // Two lines of three with 10 A each, in phase with their voltages and with 20 % of third harmonic: fundamentals of 9.806 A at 120° make one of
    // 9.806 A, thirds of 1.961 A add up to 3.922 A, together 10.561 A (phasor algebra).
    [Fact]
    public void Services_on_lines_of_their_own_meet_in_the_neutral_of_what_is_before_them()
    {
        var intake = Intake(Planner.Plan(Two("L1", "L2")));
        Carries(intake, 10, 10, 0);
        Assert.Equal(10.561, intake.Neutral!.InUse.Current.Value!.Value.Amperes, 1e-3);
    }

    [Fact]
    public void Services_on_one_line_add_up() => Carries(Intake(Planner.Plan(Two("L1", "L1"))), 20, 0, 0);

    [Fact]
    public void A_line_that_nobody_knows_counts_on_all() => Carries(Intake(Planner.Plan(Two("L1", null))), 20, 10, 10);

    // Where the intake bears 25 A a line, three kettles of 12 A go on three lines, whatever the services bear.
    [Fact]
    public void The_choice_of_outlets_keeps_to_it()
    {
        Carries(Intake(Planner.Plan(Brief([12, 12, 12], [null, null, null], ["L1", "L2", "L3"], 13, fixedOn: false))), 12, 12, 12);
    }

    [Fact]
    public void A_neighbour_before_the_services_counts()
    {
        var brief = Two("L1", "L2");
        var limit = brief.Venue.UpstreamLimits[0] with { SharedWith = [new OtherLoad("bar", PowerGigs.Amperes(7), null, Gigs.Here)] };
        var intake = Intake(Planner.Plan(brief with { Venue = brief.Venue with { UpstreamLimits = [limit] } }));
        Carries(intake, 17, 17, 7);
    }

    private static void Carries(SupplyPoint intake, params double[] amperes)
    {
        Assert.Equal(amperes.Length, intake.Legs.Count);
        Assert.All(intake.Legs.Zip(amperes), one => Assert.Equal(one.Second, one.First.InUse.Value!.Value.Amperes, 1e-9));
    }

    private static SupplyPoint Intake(Plan plan) => plan.Power.Upstreams.Single();

    private static Brief Two(string? first, string? second) => Brief([10, 10], ["PD1", "PD2"], [first, second], 25, fixedOn: true);

    private static Brief Brief(IReadOnlyList<double> draws, IReadOnlyList<string?> boxes, IReadOnlyList<string?> lines, double rating, bool fixedOn)
    {
        var things = draws.Select((_, index) => PowerGigs.Thing($"Thing {index + 1}", index)).ToList();
        var services = lines.Select((line, index) => PowerGigs.Service($"{index}", 0) with
        {
            Upstream = Given.Of("intake", Gigs.Here),
            UpstreamLine = line is null ? null : Given.Of(line, Gigs.Here),
        }).ToList();
        var brief = PowerGigs.Brief(
            things,
            [.. draws.Select((draw, index) => PowerGigs.Load($"Thing {index + 1}", draw, 0)), PowerGigs.Box("32 A blue"), PowerGigs.Lead("16 A blue"), PowerGigs.Lead("32 A blue")],
            [.. lines.Select((_, index) => PowerGigs.Distribution($"PD{index + 1}", "box", $"service {index}", index))],
            services);
        var supply = LegGigs.Supply("230/400 V three-phase 50 Hz");
        var limit = new UpstreamLimit("intake", Given.Of(supply, Gigs.Here), PowerGigs.Amperes(rating), [], Gigs.Here);
        return brief with
        {
            Venue = brief.Venue with { UpstreamLimits = [limit] },
            Gig = brief.Gig with
            {
                Power = brief.Gig.Power with { Circuits = fixedOn ? [.. boxes.Select((box, index) => new CircuitRow(box!, null, $"Thing {index + 1}", "", Gigs.Here))] : [] },
            },
        };
    }
}

using Advance.Domain.Figures;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Tests;

namespace Advance.Golden;

/// <summary>A small change to a gig changes little of its plan, whether or not there was an earlier issue.</summary>
public sealed class StabilityTests
{
    private const string Gig = "harvest-supper/gig.yaml";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Moving_a_wedge_changes_no_other_port_address_circuit_or_lead(bool hasEarlierIssue)
    {
        var (before, after) = Edit(Gig, "SR 2.6 m US 0.7 m | fiddle, lead vox", "SR 2.9 m US 1.0 m | fiddle, lead vox", hasEarlierIssue);
        Assert.Equal(Others(before, "mix/2", "SB1-out-2"), Others(after, "mix/2", "SB1-out-2"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Adding_a_direct_box_changes_no_other_port_address_circuit_or_lead(bool hasEarlierIssue)
    {
        const string Last = "      17    | Drum Vox        | vocal-mic      | tall boom  | drums             |      |\n";
        var (before, after) = Edit(Gig, Last, Last + "      23    | Sampler         | passive-di     |            | SL 1.0 m US 2.0 m |      |\n", hasEarlierIssue);
        Assert.Equal(Others(before, "The Threshers/23", "SB1-23"), Others(after, "The Threshers/23", "SB1-23"));
        Assert.NotEqual(before.Chosen.Count, after.Chosen.Count);
    }

    // Circuits are chosen on estimated leads and judged on leads as picked: a longer lead of the shop's moves a drop and no plug.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Lengthening_one_lead_owned_changes_the_drop_behind_it_and_no_other_choice(bool hasEarlierIssue)
    {
        const string Lead = "mains-16-locking-20";
        var (before, after) = Edit("stock/cables.csv", "locking mains 20 A female,20 m,", "locking mains 20 A female,23 m,", hasEarlierIssue);
        Assert.Equal(Others(before), Others(after));

        var moved = before.Voltage.Circuits.Zip(after.Voltage.Circuits)
            .Where(pair => pair.First.Drop.Value!.Value.Percent != pair.Second.Drop.Value!.Value.Percent)
            .ToList();
        Assert.Equal(FedThrough(before, Lead), moved.Select(pair => pair.First.Circuit.Name));
        Assert.All(moved, pair => Assert.True(pair.Second.Drop.Value!.Value.Percent > pair.First.Drop.Value!.Value.Percent));
    }

    private static List<string> FedThrough(Plan plan, string lead)
    {
        var links = plan.Cables.Runs.Where(run => run.Leads.Any(kind => kind.Id == lead)).Select(run => run.Link.Address.Text).ToHashSet(StringComparer.Ordinal);
        var circuits = plan.Power.Circuits.Where(circuit => circuit.Chain.Loads.Any(load => links.Contains($"link/power/{load.Name}"))).Select(circuit => circuit.Name).ToList();
        Assert.NotEmpty(circuits);
        return circuits;
    }

    private static (Plan Before, Plan After) Edit(string file, string old, string changed, bool hasEarlierIssue)
    {
        var door = new EditedDoor(new FolderDoor(Repository.Path("sample-gigs")));
        var before = PlanOf(door, Choices.None);
        var text = door.Text(file);
        Assert.Contains(old, text, StringComparison.Ordinal);
        return (before, PlanOf(door.With(file, text.Replace(old, changed, StringComparison.Ordinal)), hasEarlierIssue ? before.Chosen : Choices.None));
    }

    private static Plan PlanOf(IFileDoor door, Choices earlier) => Planner.Plan(BriefReader.Read(door, Gig).Brief!, earlier);

    private static IEnumerable<string> Others(Plan plan, params string[] own) =>
        plan.Chosen.InOrder.Where(choice => !own.Any(name => choice.Key.Text.Contains(name, StringComparison.Ordinal))).Select(choice => $"{choice.Key}: {choice.Value}");
}

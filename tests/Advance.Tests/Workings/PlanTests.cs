using System.Collections.Concurrent;
using Advance.Domain.Figures;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Tests.Planning;

namespace Advance.Tests.Workings;

/// <summary>Every working behind every figure of a plan, checked by hand: in the sample gigs, and in the gigs that rules are tried on.</summary>
public sealed class PlanTests
{
    private static readonly ConcurrentDictionary<string, Plan> Plans = new(StringComparer.Ordinal);

    public static TheoryData<string> Samples =>
        [.. Directory.GetFiles(Repository.Path("sample-gigs"), "gig.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(file => Path.GetRelativePath(Repository.Path("sample-gigs"), file).Replace('\\', '/'))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_formula_of_a_sample_gives_its_result(string gig)
    {
        var workings = WorkingsOf(Plan(Repository.Path("sample-gigs"), gig));
        Assert.True(workings.Count > 20, $"Only {workings.Count} workings.");
        None(workings.Select(ByHand.Fault).OfType<string>());
    }

    [Fact]
    public void Each_formula_of_a_rules_case_gives_its_result()
    {
        var faults = RuleCase.All.SelectMany(found => WorkingsOf(Plan(RuleCase.Folder, found.File)).Select(ByHand.Fault).OfType<string>().Select(fault => $"{found.File}: {fault}"));
        None(faults);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_working_has_a_name_a_source_and_no_symbol_twice(string gig) =>
        Assert.All(WorkingsOf(Plan(Repository.Path("sample-gigs"), gig)), working =>
        {
            Assert.NotEmpty(working.Name);
            Assert.NotEmpty(working.Source.ToString());
            Assert.Equal(working.Inputs.Count, working.Inputs.Select(input => input.Symbol).Distinct(StringComparer.Ordinal).Count());
        });

    // In full: a working that is cut short tells nothing.
    private static void None(IEnumerable<string> faults)
    {
        var all = faults.Distinct(StringComparer.Ordinal).ToList();
        Assert.True(all.Count == 0, $"{all.Count} workings do not hold:\n{string.Join('\n', all)}");
    }

    private static List<Working> WorkingsOf(Plan plan) => [.. ByHand.Behind(plan.Figures.Select(stated => stated.How).OfType<Working>())];

    private static Plan Plan(string folder, string gig) => Plans.GetOrAdd(Path.Combine(folder, gig), _ =>
    {
        var read = BriefReader.Read(new FolderDoor(folder), gig);
        Assert.True(read.Brief is not null, $"{gig} cannot be read.");
        return Planner.Plan(read.Brief);
    });
}

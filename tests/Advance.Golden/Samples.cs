using System.Collections.Concurrent;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Tests;

namespace Advance.Golden;

/// <summary>The sample gigs, read and planned once.</summary>
internal static class Samples
{
    private static readonly ConcurrentDictionary<string, Plan> Plans = new(StringComparer.Ordinal);

    public static TheoryData<string> Gigs => ["harvest-supper", "lantern-fair", "foundry-awards"];

    public static Plan Plan(string gig) => Plans.GetOrAdd(gig, name =>
    {
        var read = Read(name);
        Assert.Empty(read.Findings.Where(finding => finding.Severity == Domain.Findings.Severity.Error).Select(finding => $"{finding.At} {finding.Says}"));
        return Planner.Plan(read.Brief!);
    });

    public static BriefReading Read(string gig) => BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), $"{gig}/gig.yaml");
}

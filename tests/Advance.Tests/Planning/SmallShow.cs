using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning;

/// <summary>A gig of a few lines with its stock and its venue, in memory.</summary>
internal static class SmallShow
{
    /// <summary>Worked out; it must read without a fault.</summary>
    /// <param name="gig">Names <c>stock.yaml</c> and <c>venue.yaml</c>.</param>
    /// <param name="stock">Its stock.</param>
    /// <param name="venue">Its venue.</param>
    public static Plan Of(string gig, string stock, string venue)
    {
        var read = BriefReader.Read(MemoryDoor.Of(("gig.yaml", gig), ("stock.yaml", stock), ("venue.yaml", venue)), "gig.yaml");
        Assert.True(read.Brief is not null, string.Join("\n", read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        return Planner.Plan(read.Brief);
    }
}

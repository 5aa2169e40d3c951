using Advance.Sheets;

namespace Advance.Tests.Sheets;

/// <summary>A rehearsal that broke off would wake nothing up, and nobody would see it.</summary>
public sealed class RehearsalTests
{
    [Fact]
    public void It_goes_through_to_the_end_in_all_formats()
    {
        var printing = Rehearsal.Run(PackageRequest.Everything);
        Assert.Empty(printing.Faults);
        Assert.True(printing.PageCount > 0);
        Assert.Contains("M1", printing.Html, StringComparison.Ordinal);
        Assert.NotNull(printing.Pdf);
        Assert.NotNull(printing.Workbook);
    }
}

using Advance.Domain.Facts;

namespace Advance.Tests.Domain;

public sealed class WrittenDateTests
{
    [Theory]
    [InlineData(4, 9, "2026-09-12", "2026-09-04")]
    [InlineData(28, 12, "2027-01-10", "2026-12-28")]
    [InlineData(3, 1, "2026-12-30", "2027-01-03")]
    [InlineData(29, 2, "2027-03-01", "2027-02-28")]
    public void A_date_without_a_year_is_the_one_nearest_to_the_show(int day, int month, string near, string expected) =>
        Assert.Equal(DateOnly.Parse(expected), new WrittenDate(null, day, month, null).Resolve(DateOnly.Parse(near)));

    [Fact]
    public void A_written_year_is_obeyed_however_far_away() =>
        Assert.Equal(new DateOnly(1999, 9, 4), new WrittenDate(null, 4, 9, 1999).Resolve(new DateOnly(2026, 9, 12)));
}

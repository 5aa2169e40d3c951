using System.Text;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;

namespace Advance.Tests.Sheets;

/// <summary>A reader's copy holds their sheets only, in every format, and nobody else's private number.</summary>
public sealed class ReadersCopyTests
{
    private const string CaretakersPhone = "960121";
    private const string PatchersPhone = "960115";
    private const string ManagersPhone = "960114";

    private static readonly Lazy<Plan> Supper = new(() =>
        Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!));

    [Theory]
    [InlineData("json")]
    [InlineData("html")]
    public void The_venue_gets_no_pull_list_and_no_private_number(string format)
    {
        var copy = Copy(format, "venue").Replace('\u00A0', ' ');
        Assert.Contains("stage-plot", copy);
        Assert.DoesNotContain("pull-list", copy);
        Assert.DoesNotContain("Short boom", copy);
        Assert.DoesNotContain(CaretakersPhone, copy);
        Assert.DoesNotContain(PatchersPhone, copy);
        Assert.Contains(ManagersPhone, copy);
    }

    [Theory]
    [InlineData("json")]
    [InlineData("html")]
    public void The_crew_gets_the_numbers(string format) => Assert.Contains(CaretakersPhone, Copy(format, "crew"));

    [Fact]
    public void Only_some_sheets_is_only_those_in_the_plan_for_programs_too()
    {
        var package = PackageBuilder.Build(Supper.Value, new PackageRequest(["json"], ["input-list"], null), CompanyFolder.None);
        var json = Encoding.UTF8.GetString(package.Files.Single().Bytes.Span);
        Assert.Contains("\"input-list\"", json);
        Assert.DoesNotContain("\"day-sheet\"", json);
    }

    private static string Copy(string format, string reader)
    {
        var package = PackageBuilder.Build(Supper.Value, new PackageRequest([format], [], reader), CompanyFolder.None);
        Assert.Empty(package.Faults);
        return Encoding.UTF8.GetString(package.Files.Single().Bytes.Span);
    }
}

using System.Text;
using System.Text.Json;
using Advance.Domain.Facts;
using Advance.Domain.Wording;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;
using Advance.Sheets.Views;
using Advance.Tests;

namespace Advance.Golden;

/// <summary>Whatever is still to be confirmed may come out otherwise; then every figure that moves must have been marked.</summary>
public sealed class FlipTests
{
    private const string Gig = "harvest-supper";

    public static TheoryData<string> Subjects => [.. Samples.Plan(Gig).Brief.OpenQuestions.Select(doubt => doubt.Subject)];

    [Theory]
    [MemberData(nameof(Subjects))]
    public void A_figure_that_moves_was_marked(string subject)
    {
        var (before, after) = Flip(subject);
        var values = after.Figures.ToDictionary(stated => stated.Address);
        var unmarked = before.Figures
            .Where(stated => !values.TryGetValue(stated.Address, out var other) || Said(stated) != Said(other))
            .Where(stated => !stated.RestsOn.Any(doubt => doubt.Subject == subject))
            .Select(stated => $"{stated.Address}: {Said(stated)}");
        Assert.Empty(unmarked);
    }

    [Theory]
    [MemberData(nameof(Subjects))]
    public void A_cell_that_moves_was_tagged_itself_or_in_the_head_of_its_table(string subject)
    {
        var (before, after) = Flip(subject);
        Assert.Empty(Cells.Moved(Views(before), Views(after), Words(before, subject)).Where(moved => !moved.IsTagged).Select(moved => $"{moved.Path}: {moved.Before} -> {moved.After}"));
    }

    [Fact]
    public void Flipping_moves_something_so_that_these_tests_can_fail()
    {
        var moved = Samples.Plan(Gig).Brief.OpenQuestions.Sum(doubt =>
        {
            var (before, after) = Flip(doubt.Subject);
            return Cells.Moved(Views(before), Views(after), QuestionWords.Of(doubt)).Count;
        });
        Assert.True(moved >= Flips.HarvestSupper.Count, $"Only {moved} cells moved.");
    }

    private static string Words(Plan plan, string subject) => QuestionWords.Of(plan.Brief.OpenQuestions.Single(doubt => doubt.Subject == subject));

    private static (Plan Before, Plan After) Flip(string subject)
    {
        var before = Samples.Plan(Gig);
        var doubt = before.Brief.OpenQuestions.Single(doubt => doubt.Subject == subject);
        Assert.True(Flips.HarvestSupper.TryGetValue(subject, out var flip), $"{subject} is a new TBC: say in Flips what else it could be.");
        var door = new EditedDoor(new FolderDoor(Repository.Path("sample-gigs")));
        return (before, PlanOf(door.With(doubt.At.File, Edited(door.Text(doubt.At.File), doubt.At, flip.Old, flip.New))));
    }

    private static string Edited(string text, Mark at, string old, string changed)
    {
        var lines = text.Split('\n');
        var line = lines[at.Line - 1];
        Assert.Contains(old, line, StringComparison.Ordinal);
        lines[at.Line - 1] = line.Replace(old, changed, StringComparison.Ordinal);
        return string.Join('\n', lines);
    }

    private static Plan PlanOf(IFileDoor door)
    {
        var read = BriefReader.Read(door, $"{Gig}/gig.yaml");
        Assert.NotNull(read.Brief);
        return Planner.Plan(read.Brief);
    }

    private static string Said(Stated stated) => stated.Value is { } value ? Speech.Metric.Say(value) : "unknown";

    private static JsonElement Views(Plan plan)
    {
        var package = PackageBuilder.Build(plan, PackageRequest.Everything with { Formats = ["json"] }, CompanyFolder.None);
        return JsonDocument.Parse(Encoding.UTF8.GetString(package.Files.Single().Bytes.Span)).RootElement.GetProperty("sheets");
    }
}

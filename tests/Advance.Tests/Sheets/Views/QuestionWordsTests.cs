using Advance.Domain.Facts;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets.Views;
using Advance.Tests.Planning;

namespace Advance.Tests.Sheets.Views;

public sealed class QuestionWordsTests
{
    private static readonly Lazy<Plan> Supper = new(() =>
        Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!));

    [Theory]
    [InlineData("services / A / residual-protection", "Service A: which residual-current device protects it, how many mA?")]
    [InlineData("services / generator / generator / step", "Service generator: how much may it take at once?")]
    [InlineData("power / bonds / truss T1 / to", "Bond of truss T1: where does its bonding conductor go?")]
    [InlineData("key-for-load-out", "Who holds the key for the load-out?")]
    [InlineData("safety / hospital", "Which hospital is the nearest that takes emergencies?")]
    [InlineData("acts / Copper Lane / mixes / 3 / with", "Copper Lane, mix 3: wedge or in-ears?")]
    [InlineData("acts / Ceremony / brings", "Ceremony: what do they bring?")]
    [InlineData("sound / stacks / Main / toe-in", "Main: what is the toe in?")]
    public void A_path_of_keys_is_asked_as_a_person_would(string subject, string question) =>
        Assert.Equal(question, QuestionWords.Of(new Doubt(subject, Gigs.Here), Supper.Value));

    [Fact]
    public void What_stands_there_is_named_where_the_path_has_a_number_only()
    {
        var questions = Supper.Value.Brief.OpenQuestions.Select(doubt => QuestionWords.Of(doubt, Supper.Value)).ToList();
        Assert.Contains("The Threshers, input 12 (Fiddle): who brings it?", questions);
        Assert.Contains("15:00 (power on after test): who does it, or signs it?", questions);
    }
}

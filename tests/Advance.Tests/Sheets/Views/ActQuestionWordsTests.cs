using Advance.Domain.Facts;
using Advance.Sheets.Views;
using Advance.Tests.Planning;

namespace Advance.Tests.Sheets.Views;

/// <summary>Questions to an act are in the words of its own list, not in those of the file.</summary>
public sealed class ActQuestionWordsTests
{
    [Theory]
    [InlineData("acts / The Threshers / inputs / 12 / from", "Channel 12, Fiddle: who brings it, you or we?")]
    [InlineData("acts / The Threshers / inputs / 6-7 / place", "Channel 6-7, OH L/R: where on the stage?")]
    [InlineData("acts / The Threshers / mixes / 1 / with", "Mix 1: wedge or in-ears, and which?")]
    [InlineData("acts / The Threshers / people", "How many of you are on stage?")]
    [InlineData("acts / The Threshers / inputs / 99 / note", "Channel 99: note?")]
    [InlineData("stage / downstage-edge", "stage, downstage edge")]
    public void A_path_becomes_a_question(string path, string question)
    {
        var act = SoundGigs.Sample.Gig.Acts.Single();
        Assert.Equal(question, ActQuestionWords.Of(new Doubt(path, act.At), act));
    }
}

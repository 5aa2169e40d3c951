using Advance.Tests;

namespace Advance.Golden;

/// <summary>
/// The published program is compiled ahead of time, from what is seen to be used. Whatever it does not have because only reflection asks for
/// it, it fails at; so it is asked for all it can do, and must do it just as the program that was built.
/// </summary>
public sealed class PublishedProgramTests
{
    [SkippableTheory]
    [InlineData("harvest-supper")]
    [InlineData("lantern-fair")]
    public void It_writes_the_same_package(string gig)
    {
        var folder = Directory.CreateTempSubdirectory("advance-").FullName;
        try
        {
            var (published, built) = (Path.Combine(folder, "published"), Path.Combine(folder, "built"));
            Published().Say("build", Repository.Path("sample-gigs", gig), "--out", published);
            ProgramRun.Built.Say("build", Repository.Path("sample-gigs", gig), "--out", built);
            Assert.NotEmpty(ProgramRun.Hashes(built));
            Assert.Equal(ProgramRun.Hashes(built), ProgramRun.Hashes(published));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [SkippableTheory]
    [InlineData("--help")]
    [InlineData("rules")]
    [InlineData("rules power/circuit-overload")]
    [InlineData("schema")]
    [InlineData("schema --of stock --reference")]
    [InlineData("schema --of venue")]
    [InlineData("schema --of company")]
    [InlineData("check {lantern-fair}")]
    [InlineData("check {lantern-fair} --as json")]
    [InlineData("check {nowhere}")]
    [InlineData("explain {lantern-fair}")]
    public void It_says_the_same(string line)
    {
        string[] arguments = [.. line.Split(' ').Select(word => word.StartsWith('{') ? Repository.Path("sample-gigs", word.Trim('{', '}')) : word)];
        Assert.Equal(ProgramRun.Built.Say(arguments), Published().Say(arguments));
    }

    private static ProgramRun Published()
    {
        Skip.If(ProgramRun.Published is null, "Nobody published the program.");
        return ProgramRun.Published;
    }
}

namespace Advance.Tests.Cli;

public sealed class NewCommandTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void What_new_writes_can_be_built_at_once()
    {
        Assert.Equal(0, CommandLine.Run("new", scratch.Path("mine")).Code);
        var check = CommandLine.Run("check", scratch.Path("mine", "gig"), "--as", "short");
        Assert.Equal(0, check.Code);
        Assert.Equal(0, CommandLine.Run("build", scratch.Path("mine", "gig"), "--format", "json").Code);
        Assert.True(File.Exists(scratch.Path("mine", "gig", "package", "plan.json")));
    }

    [Fact]
    public void New_touches_nothing_that_is_there()
    {
        var mine = scratch.Write("mine/gig.yaml", "mine");
        Assert.Equal(2, CommandLine.Run("new", scratch.Path("mine")).Code);
        Assert.Equal("mine", File.ReadAllText(mine));
    }
}

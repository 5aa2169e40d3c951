namespace Advance.Tests.Cli;

public sealed class ExitCodeTests : IDisposable
{
    private const string Calm = "gig: A calm gig\nday: Sat 12 Sep 2026\n";
    private const string Stopped = "gig: The wrong day\nday: Fri 12 Sep 2026\n";
    private const string Broken = "gig: Broken\nday: Sat 12 Sep 2026\nstaage: x\n";

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData(Calm, 0)]
    [InlineData(Stopped, 1)]
    [InlineData(Broken, 2)]
    public void Check_tells_the_shell_whether_it_may_be_issued(string gig, int code) =>
        Assert.Equal(code, CommandLine.Run("check", scratch.Write("gig/gig.yaml", gig)).Code);

    [Fact]
    public void Build_writes_a_stopped_package_and_says_so_unless_it_must_be_strict()
    {
        var gig = scratch.Write("gig/gig.yaml", Stopped);
        var built = CommandLine.Run("build", gig, "--out", scratch.Path("out"), "--format", "json");
        Assert.Equal(0, built.Code);
        Assert.Contains("1 stop", built.Output);
        Assert.True(File.Exists(scratch.Path("out", "plan.json")));

        Assert.Equal(1, CommandLine.Run("build", gig, "--out", scratch.Path("strict"), "--strict").Code);
        Assert.False(Directory.Exists(scratch.Path("strict")));
    }

    [Fact]
    public void A_broken_gig_writes_nothing_and_names_file_line_and_column_with_a_caret()
    {
        var run = CommandLine.Run("build", scratch.Write("gig/gig.yaml", Broken), "--out", scratch.Path("out"));
        Assert.Equal(2, run.Code);
        Assert.False(Directory.Exists(scratch.Path("out")));
        Assert.Contains("gig/gig.yaml:3:1", run.Output);
        Assert.Contains("     3 | staage: x\n         ^^^^^^", run.Output);
        Assert.Contains("stage", run.Output);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("chekc", "x")]
    [InlineData("build", "x", "--format", "docx")]
    [InlineData("rules", "stock/no-such")]
    public void A_command_line_that_makes_no_sense_is_2(params string[] arguments)
    {
        var run = CommandLine.Run(arguments);
        Assert.Equal(2, run.Code);
        Assert.StartsWith("advance: ", run.Complaints);
    }

    [Fact]
    public void A_gig_that_is_not_there_is_2() => Assert.Equal(2, CommandLine.Run("check", scratch.Path("nowhere")).Code);

    [Fact]
    public void A_folder_that_cannot_be_written_is_2_and_says_what_the_system_said()
    {
        var run = CommandLine.Run("build", scratch.Write("gig/gig.yaml", Calm), "--out", "/proc/advance", "--format", "json");
        Assert.Equal(2, run.Code);
        Assert.Contains("Nothing was written", run.Complaints);
    }

    [Fact]
    public void An_unknown_sheet_or_reader_is_2()
    {
        var gig = scratch.Write("gig/gig.yaml", Calm);
        Assert.Equal(2, CommandLine.Run("build", gig, "--out", scratch.Path("a"), "--only", "no-such-sheet").Code);
        Assert.Equal(2, CommandLine.Run("build", gig, "--out", scratch.Path("b"), "--for", "nobody").Code);
        Assert.False(Directory.Exists(scratch.Path("a")) || Directory.Exists(scratch.Path("b")));
    }
}

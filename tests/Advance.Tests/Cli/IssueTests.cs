namespace Advance.Tests.Cli;

public sealed class IssueTests : IDisposable
{
    private const string Box = "kinds:\n  box: {name: Box, department: sound, role: stage-box, owned: 1, weight: 5 kg, ports: [{port: in, count: 4, signal: mic-line, connector: xlr-3}]}\n";
    private const string Head = "gig: Trio\nday: Sat 12 Sep 2026\nstock: stock.yaml\nsound: {stage-boxes: {SB1: {item: box, place: USR}}}\nstage: {size: 6 x 4 m, height: 0 m above floor}\n";
    private const string OneLine = "acts: {Trio: {inputs: [{ch: 9, source: Voice}]}}\n";
    private const string TwoLines = "acts: {Trio: {inputs: [{ch: 1, source: Fiddle}, {ch: 9, source: Voice}]}}\n";

    private readonly Scratch scratch = new();

    private string Kept => scratch.Path("gig", "issued.json");

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void An_issue_is_refused_while_a_stop_stands()
    {
        var run = Issue("gig: The wrong day\nday: Fri 12 Sep 2026\nrevision: A\nissued: Tue 1 Sep 2026\n");
        Assert.Equal(1, run.Code);
        Assert.Contains("schedule/weekday-wrong", run.Complaints);
        Assert.False(Directory.Exists(scratch.Path("gig", "package")) || File.Exists(Kept));
    }

    [Fact]
    public void A_stop_that_was_accepted_by_name_is_no_hindrance() => Assert.Equal(0, Issue(
        "gig: The wrong day\nday: Fri 12 Sep 2026\nrevision: A\nissued: Tue 1 Sep 2026\n"
        + "accept: [{rule: schedule/weekday-wrong, where: schedule/show, figures: Fri 12 Sep 2026, by: A Name, why: the client says so}]\n").Code);

    [Fact]
    public void An_issue_needs_a_revision_and_a_date() => Assert.Equal(1, Issue("gig: A calm gig\nday: Sat 12 Sep 2026\n").Code);

    [Fact]
    public void The_plan_is_kept_beside_the_gig_and_the_next_one_stays_near_to_it()
    {
        Assert.Equal(0, Issue(Head + OneLine + "revision: A\nissued: Tue 1 Sep 2026\n").Code);
        Assert.Contains("\"patch/Trio/9\": \"SB1 in 1\"", File.ReadAllText(Kept));
        Assert.True(File.Exists(scratch.Path("gig", "package", "package.pdf")));

        Assert.Equal(0, Issue(Head + TwoLines + "revision: B\nissued: Wed 2 Sep 2026\n").Code);
        Assert.Contains("\"patch/Trio/9\": \"SB1 in 1\"", File.ReadAllText(Kept));
        Assert.Contains("\"patch/Trio/1\": \"SB1 in 2\"", File.ReadAllText(Kept));
    }

    [Fact]
    public void One_revision_does_not_say_two_things()
    {
        Assert.Equal(0, Issue(Head + OneLine + "revision: A\nissued: Tue 1 Sep 2026\n").Code);
        Assert.Equal(0, Issue(Head + OneLine + "revision: A\nissued: Tue 1 Sep 2026\n").Code);
        var before = File.ReadAllText(Kept);
        var run = Issue(Head + TwoLines + "revision: A\nissued: Tue 1 Sep 2026\n");
        Assert.Equal(1, run.Code);
        Assert.Contains("revision A is out already", run.Complaints);
        Assert.Equal(before, File.ReadAllText(Kept));
    }

    [Theory]
    [InlineData("{\"revision\": \"A\",\n  \"chosen\": [", "gig/issued.json:2")]
    [InlineData("[[[[[[[[[[1]]]]]]]]]]", "gig/issued.json:1")]
    [InlineData("{\"revision\": \"A\", \"chosen\": {\"patch/Trio/9\": 7}, \"figures\": {}}", "gig/issued.json:1:1")]
    public void A_spoilt_issue_is_said_so_at_its_place(string text, string at)
    {
        scratch.Write("gig/issued.json", text);
        scratch.Write("gig/stock.yaml", Box);
        var run = CommandLine.Run("check", scratch.Write("gig/gig.yaml", Head + OneLine));
        Assert.Equal(2, run.Code);
        Assert.Contains("reading/not-an-issue", run.Output);
        Assert.Contains(at, run.Output);
    }

    [Fact]
    public void Choices_that_make_no_sense_any_more_are_passed_over()
    {
        scratch.Write("gig/issued.json", "{\"revision\": \"A\", \"chosen\": {\"patch/Trio/9\": \"SB7 in 99999999999\", \"patch/Trio/1\": \"in\"}, \"figures\": {}}");
        Assert.Equal(0, Issue(Head + TwoLines + "revision: B\nissued: Wed 2 Sep 2026\n").Code);
    }

    private CommandLine Issue(string gig)
    {
        scratch.Write("gig/stock.yaml", Box);
        return CommandLine.Run("issue", scratch.Write("gig/gig.yaml", gig));
    }
}

namespace Advance.Tests.Cli;

public sealed class ExplainTests : IDisposable
{
    private readonly Scratch scratch = new();

    private readonly string gig;

    public ExplainTests()
    {
        scratch.Write("gig/stock.yaml", "kinds:\n  ramp: {name: Ramp, department: sound, owned: 9, weight: 20 kg weighed}\n");
        gig = scratch.Write("gig/gig.yaml", "gig: Ramps\nday: Sat 12 Sep 2026\nstock: stock.yaml\nextras:\n- {item: ramp, count: 2}\n");
    }

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_figure_is_derived_from_what_was_written_where()
    {
        var run = CommandLine.Run("explain", gig, "load/weight");
        Assert.Equal(0, run.Code);
        Assert.StartsWith("load/weight: weight of all that is pulled, without cases, 40 kg\n", run.Output);
        Assert.Contains("w = t · m · (1 + g / 100)", run.Output);
        Assert.Contains("m = 20 kg, gig/stock.yaml:2:59, weighed or measured", run.Output);
        Assert.Contains("g = 0, policy weight-margin", run.Output);
        Assert.Contains("gives 40 kg; common practice", run.Output);
    }

    [Fact]
    public void All_figures_are_listed_by_address()
    {
        var run = CommandLine.Run("explain", gig);
        Assert.Equal(0, run.Code);
        Assert.Contains("load/weight  40 kg\n", run.Output);
    }

    [Fact]
    public void A_slip_of_the_pen_is_answered_with_the_nearest_address()
    {
        var run = CommandLine.Run("explain", gig, "load/wieght");
        Assert.Equal(2, run.Code);
        Assert.Contains("Did you mean load/weight?", run.Complaints);
    }
}

namespace Advance.Tests.Cli;

public sealed class CompanyFolderTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_partial_of_the_companys_own_changes_that_and_nothing_else()
    {
        var shipped = Build("plain", "");
        scratch.Write("house/partials/pairs.html", "<p>OUR OWN PAIRS</p>\n");
        var own = Build("own", "folder: house\n");
        Assert.Contains("OUR OWN PAIRS", own);
        Assert.DoesNotContain("OUR OWN PAIRS", shipped);
        Assert.Equal(Headings(shipped), Headings(own));
    }

    [Fact]
    public void A_broken_template_of_the_companys_own_writes_nothing_and_names_file_and_line()
    {
        scratch.Write("house/sheets/day-sheet.html", "<section class=\"sheet\" id=\"day-sheet\" title=\"Day\" data-for=\"all\" data-readers=\"all\">\n<blink>x</blink>\n</section>\n");
        var run = Run("broken", "folder: house\n");
        Assert.Equal(2, run.Code);
        Assert.Contains("sheets/day-sheet.html:2", run.Complaints);
        Assert.False(Directory.Exists(scratch.Path("broken")));
    }

    [Theory]
    [InlineData("folder: ../elsewhere\n")]
    [InlineData("folder: /etc\n")]
    public void A_folder_outside_the_tree_is_refused(string folder) => Assert.Equal(2, Run("out", folder).Code);

    [Fact]
    public void A_folder_that_is_not_there_changes_nothing() => Assert.Equal(Build("plain", ""), Build("none", "folder: nowhere\n"));

    private string Build(string output, string folder)
    {
        var run = Run(output, folder);
        Assert.True(run.Code == 0, run.Complaints + run.Output);
        return File.ReadAllText(scratch.Path(output, "package.html"));
    }

    private CommandLine Run(string output, string folder)
    {
        scratch.Write("company.yaml", "company: Lower Mill\n" + folder);
        return CommandLine.Run(
            "build", scratch.Write("gig/gig.yaml", "gig: A calm gig\nclient: The vicar\nday: Sat 12 Sep 2026\ncompany: ../company.yaml\n"), "--out", scratch.Path(output), "--format", "html");
    }

    private static IEnumerable<string> Headings(string html) => html.Split("<h1").Skip(1).Select(part => part[..part.IndexOf("</h1>", StringComparison.Ordinal)]);
}

using System.Text.RegularExpressions;
using Advance.Sheets.Markup;
using Advance.Tests.Cli;

namespace Advance.Tests.Conventions;

/// <summary>What the documents say against what the program does.</summary>
public sealed partial class DocumentConventions
{
    private static readonly string[] Names = ["check", "build", "issue", "explain", "rules", "schema", "new"];

    public static TheoryData<string> Commands => [.. Names];

    [Fact]
    public void The_readme_names_every_command_and_no_other()
    {
        var help = CommandLine.Run("--help").Output;
        Assert.All(Names, name => Assert.Contains($"\n  {name} ", help));
        var told = CommandRow().Matches(Readme()).Select(match => match.Groups["command"].Value);
        Assert.Equal(Names, told);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_readme_names_every_option_of_a_command(string command)
    {
        var row = Readme().Split('\n').Single(line => line.StartsWith($"| `{command}", StringComparison.Ordinal));
        var options = Option().Matches(CommandLine.Run(command, "--help").Output).Select(match => match.Value).Where(option => option != "--help").Distinct();
        Assert.All(options, option => Assert.Contains(option, row));
    }

    [Fact]
    public void The_list_of_sheets_is_that_of_the_templates()
    {
        var list = Repository.Path("templates", "SHEETS.md");
        if (Environment.GetEnvironmentVariable("ADVANCE_ACCEPT") == "1")
        {
            File.WriteAllText(list, SheetsOfTemplates.Write());
        }

        Assert.Equal(SheetsOfTemplates.Write(), File.ReadAllText(list));
    }

    [Fact]
    public void Every_template_of_a_sheet_is_printed_by_the_program()
    {
        var files = Directory.GetFiles(Repository.Path("templates", "sheets"), "*.html").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal);
        Assert.Equal(files, SheetsOfTemplates.Names.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_guide_to_templates_is_the_one_that_reads_them()
    {
        var guide = Repository.Path("templates", "GUIDE.md");
        if (Environment.GetEnvironmentVariable("ADVANCE_ACCEPT") == "1")
        {
            File.WriteAllText(guide, MarkupGuide.Write());
        }

        Assert.Equal(File.ReadAllText(guide), MarkupGuide.Write());
    }

    private static string Readme() => File.ReadAllText(Repository.Path("README.md"));

    [GeneratedRegex(@"^\| `(?<command>[a-z]+)[^`]*` \|", RegexOptions.Multiline)]
    private static partial Regex CommandRow();

    [GeneratedRegex(@"--[a-z]+")]
    private static partial Regex Option();
}

using System.Text.RegularExpressions;

namespace Advance.Tests.Conventions;

/// <summary>Habits of the code base that a compiler does not hold.</summary>
public sealed partial class CodeConventions
{
    private const int MostLines = 400;

    [Fact]
    public void No_file_is_longer_than_400_lines()
    {
        var tooLong = Repository.SourceFiles("src").Concat(Repository.SourceFiles("tests"))
            .Where(file => File.ReadLines(file).Count() > MostLines);
        Assert.Empty(tooLong);
    }

    [Fact]
    public void A_file_holds_one_type_and_bears_its_name()
    {
        var wrong = new List<string>();
        foreach (var file in Repository.SourceFiles("src"))
        {
            var types = TopLevelType().Matches(File.ReadAllText(file)).Select(match => match.Groups["name"].Value).Distinct().ToList();
            var name = Path.GetFileNameWithoutExtension(file).Split('.')[0];
            if (types.Count != 1 || types[0] != name)
            {
                wrong.Add($"{Path.GetRelativePath(Repository.Root, file)}: {string.Join(", ", types)}");
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void No_folder_or_type_is_a_drawer_for_odds_and_ends()
    {
        var names = Repository.SourceFiles("src").Select(file => Path.GetFileNameWithoutExtension(file));
        Assert.DoesNotContain(names, name => DrawerName().IsMatch(name));
    }

    [GeneratedRegex(@"^(?:public |internal |sealed |static |abstract |partial |readonly |ref |file )*(?:class|record struct|record|struct|interface|enum) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex TopLevelType();

    [GeneratedRegex("Helper|Manager|Util|Common|Misc")]
    private static partial Regex DrawerName();
}

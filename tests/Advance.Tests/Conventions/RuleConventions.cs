using Advance.Planning;
using Advance.Tests.Planning;

namespace Advance.Tests.Conventions;

/// <summary>What every rule must have; the tests enumerate the rule book, so a new rule cannot forget it.</summary>
public sealed class RuleConventions
{
    public static TheoryData<string> Names => [.. RuleBook.Rules.Select(rule => rule.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_says_what_it_catches_why_what_cures_it_and_who_says_so(string name)
    {
        var rule = RuleBook.Rules.Single(rule => rule.Name == name);
        Assert.All(new[] { rule.Catches, rule.Why, rule.Cures }, text => Assert.Matches(@"^[A-Z].{10,}\.$", text));
        Assert.NotEmpty(rule.Source.ToString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_stands_in_the_folder_of_its_family_in_a_file_of_its_name(string name)
    {
        var (family, fault) = (name.Split('/')[0], name.Split('/')[1]);
        var file = string.Concat(fault.Split('-').Select(Capital)) + ".cs";
        var departments = new[] { Capital(family), $"{Capital(family)}s" };
        var path = departments.Select(department => Repository.Path("src", "Advance.Planning", department, "Rules", file)).FirstOrDefault(File.Exists);
        Assert.True(path is not null, $"{name} should stand in src/Advance.Planning/{string.Join(" or ", departments)}/Rules/{file}");
        Assert.Contains($"\"{name}\"", File.ReadAllText(path));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_has_a_case_that_fires_and_one_that_must_not(string name)
    {
        var cases = RuleCase.All.Where(found => found.Rule == name).ToList();
        Assert.Contains(cases, found => found.Expected.Count > 0);
        Assert.Contains(cases, found => found.Expected.Count == 0);
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}

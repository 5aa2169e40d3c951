namespace Advance.Tests.Planning;

/// <summary>Every case of every rule: a missing finding fails, and an unexpected one does.</summary>
public sealed class RuleCaseTests
{
    public static TheoryData<string, string> Cases
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var found in RuleCase.All)
            {
                data.Add(found.File, found.Rule);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_gives_what_its_comments_expect(string file, string rule)
    {
        var found = new RuleCase(file, rule);
        Assert.Equal(found.Expected, found.Actual());
    }
}

using Advance.Reading.Files;

namespace Advance.Tests.Reading.Files;

public sealed class TreePathTest
{
    [Theory]
    [InlineData("harvest/gig.yaml", "../company.yaml", "company.yaml")]
    [InlineData("harvest/gig.yaml", "../venues/./barn.yaml", "venues/barn.yaml")]
    [InlineData("harvest/gig.yaml", "inputs.csv", "harvest/inputs.csv")]
    [InlineData("gig.yaml", "a/../b.yaml", "b.yaml")]
    [InlineData("harvest/gig.yaml", "..", "")]
    public void Starts_from_the_file_that_names_it(string from, string reference, string path)
    {
        Assert.True(TreePath.TryResolve(from, reference, out var resolved));
        Assert.Equal(path, resolved);
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("a/../../../b.yaml")]
    [InlineData("/etc/passwd")]
    [InlineData("~/gig.yaml")]
    [InlineData("C:/gig.yaml")]
    [InlineData("..\\company.yaml")]
    [InlineData("file:///etc/passwd")]
    public void Does_not_lead_outside(string reference) => Assert.False(TreePath.TryResolve("harvest/gig.yaml", reference, out _));
}

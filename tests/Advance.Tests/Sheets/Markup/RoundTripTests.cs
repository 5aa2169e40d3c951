using Advance.Paper.Tree;
using CsCheck;

namespace Advance.Tests.Sheets.Markup;

public sealed class RoundTripTests
{
    [Fact]
    public void Any_tree_written_as_markup_is_read_as_the_same_tree() => Trees.Blocks.Sample(AssertSame, iter: 300);

    [Fact]
    public void Indentation_between_blocks_changes_nothing() => Trees.Blocks.Sample(
        blocks => Assert.Equal(TreeText.Of(blocks), TreeText.Of(Reading.Blocks("\n\t " + string.Join("\r\n  ", blocks.Select(block => MarkupWriter.Write([block]))) + "\n"))),
        iter: 50);

    private static void AssertSame(Block[] blocks) => Assert.Equal(TreeText.Of(blocks), TreeText.Of(Reading.Blocks(MarkupWriter.Write(blocks))));
}

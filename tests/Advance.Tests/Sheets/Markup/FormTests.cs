using Advance.Paper.Tree;
using Advance.Sheets.Markup;
using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Markup.Subset;
using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Markup;

public sealed class FormTests
{
    public static TheoryData<string> Titles { get; } = [.. Forms.All.Select(form => form.Title)];

    [Theory]
    [MemberData(nameof(Titles))]
    public void Its_example_is_read_without_fault_and_gives_what_it_says(string title)
    {
        var form = Assert.Single(Forms.All, form => form.Title == title);
        var tree = string.Concat(ExamplesWith(form).Select(Tree));
        Assert.Contains(form.Gives == typeof(Sheet) ? "Paragraph" : form.Gives.Name, tree, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void It_stands_in_the_guide_with_all_that_can_be_said_about_it(string title)
    {
        var form = Assert.Single(Forms.All, form => form.Title == title);
        var section = MarkupGuide.Write().Split("### ").Single(part => part.StartsWith($"`{title}`\n", StringComparison.Ordinal));
        Assert.Contains(form.Example, section, StringComparison.Ordinal);
        Assert.All(form.Attributes, attribute => Assert.Contains($"- `{attribute.Name}`", section, StringComparison.Ordinal));
        Assert.All(form.Words, word => Assert.Contains($"- `class=\"{word.Word}\"`", section, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_type_of_the_tree_that_a_sheet_can_hold_has_an_element()
    {
        var tree = string.Concat(Forms.All.Where(form => form.Example.Length > 0).Select(form => Tree(form.Example)));
        var types = typeof(Block).Assembly.GetTypes()
            .Where(type => !type.IsAbstract && (type.IsSubclassOf(typeof(Block)) || type.IsSubclassOf(typeof(Inline))));
        Assert.All(types, type => Assert.Contains($" {type.Name}\n", tree, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(typeof(Align))]
    [InlineData(typeof(Orientation))]
    [InlineData(typeof(PageSize))]
    [InlineData(typeof(TypeClass))]
    [InlineData(typeof(Verdict))]
    public void A_word_of_an_enumeration_is_found_by_its_place_in_it(Type enumeration)
    {
        var values = Enum.GetValuesAsUnderlyingType(enumeration).Cast<int>().ToList();
        Assert.Equal(Enumerable.Range(0, values.Count), values);
        Assert.Equal(values.Count, Values.OneOf(enumeration).Words.Count);
    }

    private static List<string> ExamplesWith(Form form)
    {
        var opening = form.Class is null ? $"<{form.Name}" : $"<{form.Name} class=\"{form.Class}\"";
        var examples = Forms.All.Select(other => other.Example).Where(example => example.Contains(opening, StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(examples);
        return examples;
    }

    private static string Tree(string example)
    {
        var tag = (OpenTag)new Scanner(example, new MarkupFaults(RenderedTemplate.Of("t", "").Map)).Next()!;
        var isLine = Forms.Named(tag.Name).All(form => form.Is.HasFlag(Content.Line));
        return TreeText.Of(tag.Name == "section" ? Reading.Sheet(example).Blocks : Reading.Blocks(isLine ? $"<p>{example}</p>" : example));
    }
}

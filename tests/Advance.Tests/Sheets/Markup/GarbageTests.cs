using Advance.Sheets.Markup;
using Advance.Sheets.Markup.Subset;
using Advance.Sheets.Templating;
using Advance.Tests.Sheets.Templating;
using CsCheck;

namespace Advance.Tests.Sheets.Markup;

/// <summary>What somebody may write by mistake is a fault with a place, never an exception.</summary>
public sealed class GarbageTests
{
    private static readonly string[] MarkupPieces =
    [
        .. Forms.All.SelectMany(form => new[] { $"<{form.Name}", $"<{form.Name} class='{form.Class}'", $"</{form.Name}>" }),
        .. Forms.All.SelectMany(form => form.Attributes).Select(attribute => $" {attribute.Name}='").Distinct(),
        ">", "/>", "'", "\"", "=", "<", "&", ";", "&#", "&amp;", "<!--", "-->", "<!", "<?", "x", " ", "\n", "1", "#a", "group", "sub",
    ];

    private static readonly string[] TemplatePieces =
    [
        "{{", "}}", "{{-", "-}}", "{%{", "}%}", "for ", "x ", "in ", "if ", "else", "end", "while ", "func ", "ret ", "include ", "\"partials/tbc.html\" ", "who: ",
        "name", "rows", ".", "text", "[", "]", "(", ")", "{", "}", "|", "+", "*", "..", "=", "==", "?", ":", "?.", "@", "^", "$", "$1", "1", "0", "\"", "'", "`", ";", "\n", ",", "!",
        "array.join ", "string.upcase ", "math.round ", "given", "do", "case ", "when ", "with ", "this", "empty", "null", "true", "break", "continue", "readonly ", "import ", "<p>", "++",
    ];

    [Fact]
    public void No_markup_makes_the_reader_fall() =>
        Soup(MarkupPieces).Sample(markup => AssertPlaces(Reading.Read(RenderedTemplate.Of("t", markup)), markup), iter: 3000);

    [Fact]
    public void No_template_makes_the_engine_fall() =>
        Soup(TemplatePieces).Sample(
            template =>
            {
                var limits = new TemplateLimits { Rounds = 100, Steps = 10_000, Output = 10_000 };
                AssertPlaces(new SheetsRead([], Rendering.Render("{{" + template, new View("a", ["b", "c"]), limits).Faults), "{{" + template);
            },
            iter: 3000);

    private static Gen<string> Soup(string[] pieces) => Gen.Int[0, pieces.Length - 1].Array[0, 40].Select(picks => string.Concat(picks.Select(pick => pieces[pick])));

    private static void AssertPlaces(SheetsRead read, string source)
    {
        var lines = source.Split('\n');
        Assert.All(read.Faults.Where(fault => fault.At.File is "t" or Rendering.Name), fault =>
        {
            Assert.InRange(fault.At.Line, 1, lines.Length);
            Assert.InRange(fault.At.Column, 1, lines[fault.At.Line - 1].Length + 1);
            Assert.EndsWith(".", fault.Says, StringComparison.Ordinal);
        });
    }

    private sealed record View(string Name, IReadOnlyList<string> Rows);
}

using Advance.Paper;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using CsCheck;

namespace Advance.Tests.Paper.Setting;

public sealed class SetTextTests : IDisposable
{
    private readonly Shaper shaper;
    private readonly Composer composer;

    public SetTextTests()
    {
        var faults = new Faults();
        shaper = new Shaper(FaceSet.Of([], faults), faults);
        composer = new Composer(shaper, TypeScale.For(TypeClass.Desk), new Targets([], faults));
    }

    public void Dispose() => shaper.Dispose();

    [Fact]
    public void At_its_most_it_takes_one_line_and_one_less_takes_two()
    {
        var text = composer.Compose("carry the sub with two people", composer.Body);
        Assert.Equal(1, text.Fit(text.Most).Count);
        Assert.Equal(2, text.Fit(text.Most - 1).Count);
    }

    [Fact]
    public void A_number_and_its_unit_are_never_parted()
    {
        var text = composer.Compose([new Text("take "), new Datum("25 m", new NumberValue(25, "m")), new Text(" lead")], composer.Body);
        Assert.Equal(["take", "25 m", "lead"], Lines(text.Fit(text.Least)));
    }

    [Fact]
    public void A_tick_box_is_never_parted_from_its_label()
    {
        var text = composer.Compose([new TickBox("built and pinned")], composer.Body);
        Assert.Equal(text.Least, text.Most);
    }

    [Fact]
    public void A_line_to_write_on_takes_what_is_left_of_its_line()
    {
        var text = composer.Compose([new Text("by "), new WriteIn(10)], composer.Body);
        var marks = new List<Mark>();
        text.Fit(200_000).Draw(marks, 0, 0, 200_000, Align.Left);
        Assert.Equal(200_000, marks.OfType<StrokeMark>().Single().X2);
    }

    [Fact]
    public void A_word_of_sixty_letters_is_cut_to_fit()
    {
        var word = string.Concat(Enumerable.Repeat("abcdef", 10));
        var lines = Lines(composer.Compose(word, composer.Body).Fit(60_000));
        Assert.InRange(lines.Count, 5, 8);
        Assert.Equal(word, string.Concat(lines));
    }

    [Fact]
    public void A_label_stays_whole_where_it_finds_room_on_a_line_of_its_own()
    {
        var label = composer.Compose("control-out-main", composer.Body);
        var text = composer.Compose("from control-out-main", composer.Body);
        Assert.Equal(["from", "control-out-main"], Lines(text.Fit(label.Most)));
        Assert.Equal("from control-", Lines(text.Fit(label.Most - 1))[0]);
    }

    [Fact]
    public void What_is_written_as_one_letter_is_not_cut()
    {
        var text = composer.Compose("e\u0301e\u0301e\u0301e\u0301e\u0301e\u0301", composer.Body);
        Assert.All(Lines(text.Fit(12_000)), line => Assert.NotEqual('\u0301', line[0]));
    }

    [Fact]
    public void Words_from_right_to_left_stand_in_turned_order()
    {
        var marks = new List<Mark>();
        composer.Compose("say אחת שתיים now", composer.Body).Fit(400_000).Draw(marks, 0, 0, 400_000, Align.Left);
        Assert.Equal(["say", "שתיים", "אחת", "now"], marks.OfType<RunMark>().SelectMany(r => r.Words).Select(w => w.Word.Text));
    }

    [Fact]
    public void No_line_is_wider_than_there_is_room() =>
        Gen.Select(Gen.Char['a', 'z'].Array[1, 12].Select(c => new string(c)).Array[1, 30], Gen.Int[15_000, 300_000]).Sample(t =>
        {
            var (words, width) = t;
            var marks = new List<Mark>();
            composer.Compose(string.Join(' ', words), composer.Body).Fit(width).Draw(marks, 0, 0, width, Align.Right);
            foreach (var run in marks.OfType<RunMark>())
            {
                Assert.True(run.X >= 0 && run.X + run.Width <= width);
            }

            Assert.Equal(string.Concat(words), string.Concat(marks.OfType<RunMark>().SelectMany(r => r.Words).Select(w => w.Word.Text)));
        },
        threads: 1);

    private static List<string> Lines(SetLines lines)
    {
        var marks = new List<Mark>();
        lines.Draw(marks, 0, 0, 1_000_000, Align.Left);
        return [.. marks.OfType<RunMark>().GroupBy(r => r.Baseline).Select(g => string.Join(' ', g.Select(r => r.Text())))];
    }
}

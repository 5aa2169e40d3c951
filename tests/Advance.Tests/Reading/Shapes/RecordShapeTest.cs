using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Tests.Reading.Shapes;

public sealed class RecordShapeTest
{
    [Fact]
    public void What_is_left_out_is_null_its_default_empty_or_an_open_question()
    {
        var barn = Read("name: Tithe\n").Value!;

        Assert.Equal((null, null, null, 2, null), (barn.Limit, barn.Sides, barn.Note, barn.Steps, barn.Place));
        Assert.Empty(barn.Brings);
        Assert.Empty(barn.Lines);
        Assert.False(barn.Height.IsKnown);
        Assert.Equal(new Doubt("height", new("gig.yaml", 1, 1, 4), LeftOut: true), barn.Height.Doubt);
        Assert.Equal("points", barn.Points.Doubt!.Subject);
    }

    [Fact]
    public void What_is_blank_counts_as_left_out()
    {
        var barn = Read("name: Tithe\nheight:\nlimit:\nsides:\nsteps:\nbrings:\nlines:\n").Value!;

        Assert.Equal((null, null, 2), (barn.Limit, barn.Sides, barn.Steps));
        Assert.Equal(new Doubt("height", new("gig.yaml", 2, 1, 6), LeftOut: true), barn.Height.Doubt);
    }

    // So that a cell of a table may be left blank that makes a row.
    [Fact]
    public void What_must_be_written_and_may_be_open_is_a_question_where_it_is_blank()
    {
        var reads = Reads<Peg>.Of(Peg.Shape, "along:\n");

        Assert.Empty(reads.Findings);
        Assert.False(reads.Value!.Along.IsKnown);
        Assert.Equal(["along"], reads.Reader.Doubts.Select(doubt => doubt.Subject));
        Assert.Equal(["reading/missing-key"], Reads<Peg>.Of(Peg.Shape, "{}\n").Rules);
    }

    [Fact]
    public void Values_carry_their_places_and_doubts()
    {
        var barn = Read("name: Tithe\nheight: 5.2 m TBC venue by Fri 4 Sep\nlimit: 250 kg\nsides: SR SL\nbrings: [2 x wedge, drum kit]\nsets: [20:00 for 45 min, TBC agent]\n").Value!;

        Assert.Equal(Length.FromMeters(5.2), barn.Height.Value);
        Assert.Equal(new Mark("gig.yaml", 2, 9, 28), barn.Height.At);
        Assert.Equal(new Doubt("height", barn.Height.At, "venue", new WrittenDate(DayOfWeek.Friday, 4, 9, null), "5.2 m"), barn.Height.Doubt);
        Assert.Null(barn.Limit!.Value.Doubt);
        Assert.Equal(new Sides(Side.StageRight, Side.StageLeft), barn.Sides);
        Assert.Equal([new CountedItem(2, "wedge"), new CountedItem(1, "drum kit")], barn.Brings);
        Assert.Equal([true, false], barn.Sets.Select(set => set.IsKnown));
        Assert.Equal("agent", barn.Sets[1].Doubt!.Who);
    }

    [Fact]
    public void Lists_and_tables_may_be_open_as_a_whole()
    {
        var reads = Read("name: Tithe\npoints: TBC venue\nbrings: TBC act\n");

        Assert.False(reads.Value!.Points.IsKnown);
        Assert.Equal("venue", reads.Value.Points.Doubt!.Who);
        Assert.Empty(reads.Value.Brings);
        Assert.Equal(["brings", "points"], reads.Reader.Doubts.Where(doubt => !doubt.LeftOut).Select(doubt => doubt.Subject).Order());
    }

    [Fact]
    public void A_question_about_a_plain_value_is_asked_though_the_value_does_not_carry_it()
    {
        var reads = Read("name: Tithe TBC owner\nnote: TBC\nsteps: 3 TBC\n");

        Assert.Equal(("Tithe", null, 3), (reads.Value!.Name, reads.Value.Note, reads.Value.Steps));
        Assert.Equal(["name", "note", "steps"], reads.Reader.Doubts.Where(doubt => !doubt.LeftOut).Select(doubt => doubt.Subject));
    }

    [Fact]
    public void Things_are_named_by_their_keys_and_keep_their_order()
    {
        var barn = Read("name: Tithe\ninner:\n  Zoo: {name: a}\n  Ark:\n    name: b\n    inner: {Cot: {name: c, height: TBC}}\n").Value!;

        Assert.Equal(["a", "b"], barn.Inner.Select(inner => inner.Name));
        Assert.Equal([new Mark("gig.yaml", 3, 3, 3), new Mark("gig.yaml", 4, 3, 3)], barn.Inner.Select(inner => inner.At));
        Assert.Equal("inner / Ark / inner / Cot / height", barn.Inner[1].Inner[0].Height.Doubt!.Subject);
    }

    [Theory]
    [InlineData("name: Tithe\n«hieght»: 5 m\n", "reading/unknown-key", "did you mean height?")]
    [InlineData("name: Tithe\n«quiche»: 5 m\n", "reading/unknown-key", "Keys here are name, height")]
    [InlineData("«nmae»: Tithe\n", "reading/unknown-key", "did you mean name?")]
    [InlineData("«steps»: 2\n", "reading/missing-key", "name is missing in barn")]
    [InlineData("name: Tithe\ninner:\n  «Zoo»: {steps: 1}\n", "reading/missing-key", "name is missing in Zoo")]
    [InlineData("name: Tithe\ninner:\n  «Zoo»:\n", "reading/missing-key", "name is missing in Zoo")]
    [InlineData("name: Tithe\nlines: [{no: 1, source: a}, «{»source: b}]\n", "reading/missing-key", "no is missing")]
    [InlineData("«name»:\n", "reading/blank", "name is blank")]
    [InlineData("«name»: |\nsteps: 1\n", "reading/blank", "name is blank")]
    [InlineData("name: «TBC»\n", "reading/needed-now", "name cannot stay open")]
    [InlineData("name: Tithe\nheight: «5»\n", "reading/which-unit", "5 has no unit")]
    [InlineData("name: Tithe\nheight: 5.2 «kg» TBC\n", "reading/no-such-unit", "kg")]
    [InlineData("name: Tithe\nheight: 5.2 m TBC by «Friday»\n", "reading/by-when", "Friday")]
    [InlineData("name: Tithe\nbrings: [a, 2 x b, «0» x c]\n", "reading/out-of-range", "0")]
    [InlineData("name: Tithe\nbrings:\n  - a\n  -« »\n", "reading/blank", "blank")]
    [InlineData("name: Tithe\nbrings: «a, b»\n", "reading/wrong-kind", "[a, b]")]
    [InlineData("name: Tithe\nbrings: «{»a: b}\n", "reading/wrong-kind", "a list")]
    [InlineData("name: Tithe\nbrings: [«Snare»: top]\n", "reading/wrong-kind", "colon")]
    [InlineData("name: «[»Tithe]\n", "reading/wrong-kind", "a text")]
    [InlineData("name: Tithe\ninner: «Zoo»\n", "reading/wrong-kind", "a map of names")]
    [InlineData("name: Tithe\ninner: {Zoo: «tall»}\n", "reading/wrong-kind", "barn")]
    [InlineData("name: Tithe\nlines: «no | source 1 | a»\n", "reading/wrong-kind", "start the table on the next line")]
    [InlineData("name: Tithe\nplace: [1.2, «4 kg», 6 m]\n", "reading/no-such-unit", "kg")]
    [InlineData("name: Tithe\nplace: «[»1, 2, 3]\n", "reading/which-unit", "unit")]
    public void What_is_wrong_is_one_finding_at_its_place(string marked, string rule, string said)
    {
        var text = MarkedText.Of(marked);

        var reads = Read(text.Text);

        Assert.Null(reads.Value);
        var finding = Assert.Single(reads.Findings);
        Assert.Equal((rule, text.Marks[0].Line, text.Marks[0].Column), (finding.Rule, finding.At.Line, finding.At.Column));
        Assert.Contains(said, $"{finding.Says} {finding.Cure}", StringComparison.Ordinal);
    }

    [Fact]
    public void One_run_finds_all()
    {
        var text = MarkedText.Of("name: Tithe\nheight: «5»\nlimit: 2 «ton»\nsides: «both»\n«stesp»: 3\ninner:\n  «Zoo»: {steps: «few»}\n");

        var reads = Read(text.Text);

        Assert.Equal(text.Marks.Order(), reads.Findings.Select(finding => finding.At).Order());
    }

    [Fact]
    public void What_could_not_be_made_out_is_not_said_to_be_missing()
    {
        var reads = Read("name: @home\nheight: 5 m\n");
        var other = Read("nameTithe\nheight: 5 m\n");

        Assert.Equal(["reading/leading-sign"], reads.Rules);
        Assert.Equal(["reading/no-colon"], other.Rules);
        Assert.Null(other.Value);
    }

    private static Reads<Barn> Read(string text) => Reads<Barn>.Of(Barn.Shape, text);

    private sealed record Peg(Given<Length> Along)
    {
        public static readonly RecordShape<Peg> Shape = new("peg", "A peg.", keys =>
        {
            var along = keys.Needed("along", new GivenShape<Length>(Written.Length), "Along.");
            return row => new Peg(along(row));
        });
    }
}

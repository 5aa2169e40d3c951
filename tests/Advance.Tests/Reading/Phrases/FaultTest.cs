using Advance.Reading.Phrases;

namespace Advance.Tests.Reading.Phrases;

/// <summary>What is said about what is wrong, and where the caret stands: between « and ».</summary>
public sealed class FaultTest
{
    public static readonly TheoryData<string, string, string, string> Faults = new()
    {
        { "length", "which-unit", "«6.5»", "m, cm, mm, km, ft, in" },
        { "length", "decimal-comma", "«1,5» m", "1.5" },
        { "length", "no-such-unit", "12 «kg»", "a weight" },
        { "length", "no-such-unit", "12 «M»", "did you mean m?" },
        { "length", "no-such-unit", "12 «metres»", "did you mean m?" },
        { "length", "no-such-unit", "12 «furlongs»", "furlongs" },
        { "length", "which-unit", "12' «6»", "in" },
        { "length", "negative", "«-»12 m", "less than nothing" },
        { "length", "left-over", "12 m «high»", "high" },
        { "length", "not-this", "«quite long»", "12 m" },
        { "length", "too-long", "«1234567890123» m", "digits" },
        { "weight", "ton", "2 «ton»", "1016" },
        { "weight", "ton", "2 «tons»", "1016" },
        { "weight", "no-such-unit", "2 «tonnes»", "did you mean t?" },
        { "weight", "no-such-unit", "2 «KG»", "did you mean kg?" },
        { "current", "which-unit", "«63»", "A, mA, kA" },
        { "length-of-time", "no-such-unit", "45 «mins»", "did you mean min?" },
        { "length-of-time", "no-such-unit", "45 «m»", "did you mean min?" },
        { "power-drawn", "no-such-unit", "2.4 «kVA»", "an apparent power" },
        { "size", "which-unit", "«8 x 5»", "no unit" },
        { "size", "no-such-unit", "8 x 5 «kg»", "a weight" },
        { "size", "not-this", "«8 m»", "8 x 5 m" },
        { "date", "all-figures-date", "Sat «12/09/2026»", "different days" },
        { "date", "all-figures-date", "«2026-09-12»", "different days" },
        { "date", "all-figures-date", "«12.9.26»", "different days" },
        { "date", "day-first", "«Sat Sep 12, 2026»", "12 Sep 2026" },
        { "date", "no-such-day", "«31» Sep 2026", "no day 31" },
        { "date", "no-such-day", "«29» Feb 2027", "no day 29" },
        { "time", "clock", "«7:30 pm»", "19:30" },
        { "time", "clock", "«7 pm»", "19:00" },
        { "time", "clock", "«12:15am»", "00:15" },
        { "time", "clock", "«19.30»", "19:30" },
        { "time", "clock", "«1930»", "19:30" },
        { "time", "clock", "«24:00»", "00:00 +1" },
        { "time", "clock", "«25:00»", "19:30" },
        { "time", "clock", "«19:75»", "19:30" },
        { "time-range", "backwards", "«22:00-07:00»", "+1" },
        { "set-time", "which-unit", "20:00 for «45»", "min" },
        { "set-time", "not-this", "«20:00»", "20:00 for 45 min" },
        { "number-range", "backwards", "«11-10»", "smaller one first" },
        { "number-range", "out-of-range", "«0»", "1 and more" },
        { "place", "which-unit", "SR «4.6» US 0.4 m", "no unit" },
        { "place", "decimal-comma", "SR «4,6» m", "4.6" },
        { "place", "twice", "SR 4.6 m «SL 2 m»", "said twice" },
        { "place", "capitals", "«dsr»", "DSR" },
        { "place", "capitals", "«sr» 4.6 m", "SR" },
        { "place", "which-unit", "«[1.2, 4, 6.5]»", "no unit" },
        { "aim", "which-unit", "toe-in «5»", "deg" },
        { "height", "which-unit", "«0.6» above floor", "no unit" },
        { "owner", "no-such-word", "«shp»", "did you mean shop?" },
        { "sides", "no-such-word", "«both»", "SR SL" },
        { "counted-item", "out-of-range", "«0» x wedge", "1 and more" },
        { "crossover", "which-unit", "«100» in sub-18", "Hz" },
        { "share", "which-unit", "«10»", "%" },
        { "yes-no", "no-such-word", "«true»", "yes, no" },
        { "slots", "out-of-range", "«513»", "1 to 512" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void Is_named_and_pointed_at(string phrase, string rule, string marked, string said)
    {
        var (text, at) = (MarkedText.Of(marked).Text, MarkedText.Of(marked).Marks[0]);

        var fault = AllPhrases.ByName[phrase].FaultOf(text);

        Assert.NotNull(fault);
        Assert.Equal((rule, at.Column - 1, at.Length), (fault.Rule, fault.Offset, fault.Length));
        Assert.Contains(said, $"{fault.Says} {fault.Cure}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("63 A TBC", 4, null, null)]
    [InlineData("TBC", 0, null, null)]
    [InlineData("tbd", 0, null, null)]
    [InlineData("63 A TBA venue", 4, "venue", null)]
    [InlineData("63 A TBC venue by 4 Sep", 4, "venue", 4)]
    [InlineData("TBC by Fri 4 Sep", 0, null, 4)]
    [InlineData("63 A TBC by venue by 4 Sep", 4, "venue", 4)]
    [InlineData("TBC by the caretaker", 0, "the caretaker", null)]
    [InlineData("The Tbc of the shop", 3, "of the shop", null)]
    public void Tbc_says_who_and_when(string text, int body, string? who, int? day)
    {
        var tail = Tail.Find(text, out var fault);

        Assert.Null(fault);
        Assert.Equal((body, who, day), (tail!.Body, tail.Who, tail.By?.Day));
    }

    [Theory]
    [InlineData("63 A")]
    [InlineData("TBCs are open")]
    [InlineData("the-TBC")]
    public void Tbc_is_a_word_of_its_own(string text) => Assert.Null(Tail.Find(text, out _));

    [Theory]
    [InlineData("by-when", "63 A TBC venue by «Friday»")]
    [InlineData("all-figures-date", "TBC venue by «4/9/2026»")]
    [InlineData("no-such-day", "TBC by «31» Sep")]
    public void A_date_after_by_is_a_date(string rule, string marked)
    {
        var text = MarkedText.Of(marked);

        Tail.Find(text.Text, out var fault);

        Assert.Equal((rule, text.Marks[0].Column - 1, text.Marks[0].Length), (fault!.Rule, fault.Offset, fault.Length));
    }
}

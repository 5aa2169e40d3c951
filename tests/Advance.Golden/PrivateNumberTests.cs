using System.Text;
using Advance.Sheets;
using Advance.Sheets.Views;

namespace Advance.Golden;

/// <summary>Other people's numbers stand in the copies of those who work with them, and in no other.</summary>
public sealed class PrivateNumberTests
{
    private const string Gig = "harvest-supper";

    public static TheoryData<string> Strangers => ["venue", "shop", "sound", "electrician", "rigger", "act"];

    [Theory]
    [MemberData(nameof(Strangers))]
    public void A_copy_for_others_has_no_private_number_and_says_who_holds_them(string reader)
    {
        var copy = Copy(reader);
        Assert.All(Numbers(), number => Assert.DoesNotContain(number, copy, StringComparison.Ordinal));
        Assert.Contains("Other numbers are with Joan Tarrant", copy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("all")]
    [InlineData("crew")]
    public void The_crew_have_them_all(string? reader)
    {
        var copy = Copy(reader);
        Assert.All(Numbers(), number => Assert.Contains(number, copy, StringComparison.Ordinal));
        Assert.DoesNotContain("Other numbers are with", copy, StringComparison.Ordinal);
    }

    private static List<string> Numbers()
    {
        var brief = Samples.Plan(Gig).Brief;
        var numbers = brief.Gig.People.Where(person => !DaySheetViews.IsManager(person)).Select(person => person.Phone!.Value.Value)
            .Concat(brief.Venue.Contacts.Where(contact => contact.Private).Select(contact => contact.Phone.Value))
            .Select(Bare)
            .ToList();
        Assert.Equal(3, numbers.Count);
        return numbers;
    }

    // All that is written, with the blanks of numbers taken out.
    private static string Copy(string? reader)
    {
        var package = PackageBuilder.Build(Samples.Plan(Gig), PackageRequest.Everything with { Formats = ["html", "json"], Reader = reader }, CompanyFolder.None);
        Assert.Empty(package.Faults);
        var text = string.Concat(package.Files.Select(file => Encoding.UTF8.GetString(file.Bytes.Span)));
        return text + Bare(text);
    }

    private static string Bare(string text) => text.Replace(" ", "", StringComparison.Ordinal).Replace("\u00A0", "", StringComparison.Ordinal);
}

using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Somebody of the crew.</summary>
internal static class PersonShape
{
    public static readonly RecordShape<Person> It = new("person", "Somebody of the crew.", keys =>
    {
        var does = keys.Defaulted("does", Written.Text, "", "What they do on the gig.", "not said");
        var skills = keys.Any("skill", Written.List(Written.Name), "What they can do.");
        var phone = keys.Open("phone", Written.Text, "As dialled.");
        var call = keys.Open("call", Written.Time, "When they start.");
        return row => new Person(row.Name, does(row), skills(row), phone(row), call(row), row.At);
    });
}

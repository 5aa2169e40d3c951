using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>Somebody to ring, at a venue or a company.</summary>
internal static class ContactShape
{
    public static readonly RecordShape<Contact> It = new("contact", "Somebody to ring.", keys =>
    {
        var role = keys.Defaulted("role", Written.Text, "", "What they are for.", "not said");
        var phone = keys.Asked("phone", Written.Text, "As dialled.");
        var isPrivate = keys.Defaulted("private", Written.YesNo, false, "Whether the number stays off other people's copies.", "no");
        return row => new Contact(row.Name, role(row), phone(row), isPrivate(row), row.At);
    });
}

using Advance.Domain.Companies;
using Advance.Domain.Places;
using Advance.Domain.Wording;
using Advance.Reading.Shapes;
using Advance.Reading.Venues;

namespace Advance.Reading.Companies;

/// <summary>A company file.</summary>
internal static class CompanyShape
{
    private static readonly IReadOnlyDictionary<string, string> NoNumbering = new Dictionary<string, string>(StringComparer.Ordinal);
    private static readonly Shape<string> Colours = Written.OneOf("conductor-colours", "a set of conductor colours", ("IEC 60445", "IEC 60445"), ("US", "US"));

    public static readonly RecordShape<Company> It = new("company", "Whose name is on the paper, and how it works.", keys =>
    {
        var name = keys.Needed("company", Written.Text, "Its name on the paper.");
        var address = keys.Defaulted("address", Written.Text, "", "One line.", "not said");
        var contacts = keys.Any("contacts", Written.TableOfThings(ContactShape.It, "name"), "People of the company.");
        var logo = keys.Optional("logo", Written.Picture, "A picture, as a path from this file.");
        var folder = keys.Optional("folder", Written.Picture, "A folder with its own sheets, partials and fonts, as a path from this file; each takes the place of what is shipped under its name.");
        var paper = keys.Defaulted("paper", PaperShape.It, (Size: PaperSize.A4, Units: UnitSystem.Metric), "What it prints on, and in which units.", "A4, metric");
        var colours = keys.Defaulted("conductor-colours", Colours, "IEC 60445", "Colours of conductors.", "IEC 60445");
        var numbering = keys.Defaulted("numbering", Written.Facts, NoNumbering, "Which way things are counted, by kind of thing.", "not said");
        var aim = keys.Defaulted("aim", Written.Aim, Aim.Straight.It, "How loudspeakers point where the gig does not say.", "straight");
        var policies = keys.Defaulted("policies", PoliciesShape.It, Policies.Default, "How it works.", "common practice");
        return row => new Company
        {
            Name = name(row),
            Address = address(row),
            Contacts = contacts(row),
            Logo = logo(row),
            Folder = folder(row),
            Paper = paper(row).Size,
            Units = paper(row).Units,
            ConductorColours = colours(row),
            Numbering = numbering(row),
            Aim = aim(row),
            Policies = policies(row),
        };
    });
}

using Advance.Domain.Places;
using Advance.Domain.Wording;

namespace Advance.Domain.Companies;

/// <summary>Whose name is on the paper, and how it works.</summary>
public sealed record Company
{
    /// <summary>What stands where a gig names no company.</summary>
    public static readonly Company Default = new();

    /// <summary>As printed; empty where unknown.</summary>
    public string Name { get; init; } = "";

    /// <summary>One line; empty where unknown.</summary>
    public string Address { get; init; } = "";

    /// <summary>People of the company.</summary>
    public IReadOnlyList<Contact> Contacts { get; init; } = [];

    /// <summary>Path of a picture, relative to the folder of the gig's tree; null for none.</summary>
    public string? Logo { get; init; }

    /// <summary>Path of the folder with its own templates and fonts, relative to the folder of the gig's tree; null for none.</summary>
    public string? Folder { get; init; }

    /// <summary>The paper it prints on.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>The units that the paper speaks.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>Colours of conductors: <c>IEC 60445</c> or <c>US</c>.</summary>
    public string ConductorColours { get; init; } = "IEC 60445";

    /// <summary>Which way things are counted, by kind of thing: <c>fixtures</c> to <c>from SR</c>.</summary>
    public IReadOnlyDictionary<string, string> Numbering { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>How loudspeakers point where the gig does not say.</summary>
    public Aim Aim { get; init; } = Aim.Straight.It;

    /// <summary>Its settings.</summary>
    public Policies Policies { get; init; } = Policies.Default;
}

using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>Settings of a company.</summary>
internal static class PoliciesShape
{
    public static readonly RecordShape<Policies> It = new("policies", "How the company works; what is left out is common practice.", keys =>
    {
        var mics = keys.Defaulted("spare-mics", Written.Share, Policies.Default.SpareMics, "Spares of each kind of microphone.", Say(Policies.Default.SpareMics));
        var directBoxes = keys.Defaulted("spare-di", Written.Share, Policies.Default.SpareDirectBoxes, "Spares of each kind of direct box.", Say(Policies.Default.SpareDirectBoxes));
        var stands = keys.Defaulted("spare-stands", Written.Share, Policies.Default.SpareStands, "Spares of each size of stand.", Say(Policies.Default.SpareStands));
        var ports = keys.Defaulted("free-ports", Written.Share, Policies.Default.FreePorts, "What stays free on each stage box, in and out.", Say(Policies.Default.FreePorts));
        var margins = keys.Defaulted("weight-margin", WeightMarginsShape.It, Policies.Default.WeightMargin, "What is added to a weight, by how it is known.", "0 %, 5 %, 10 %");
        var cables = keys.Defaulted("cables", CablePoliciesShape.It, Policies.Default.Cables, "How long leads must be, and how they are put together.", "common practice");
        return row => new Policies
        {
            SpareMics = mics(row),
            SpareDirectBoxes = directBoxes(row),
            SpareStands = stands(row),
            FreePorts = ports(row),
            WeightMargin = margins(row),
            Cables = cables(row),
        };
    });

    private static string Say(Share share) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{share.Percent} % at least {share.AtLeast}");
}

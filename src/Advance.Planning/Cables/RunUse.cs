using Advance.Domain.Companies;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a run is for, as far as its length and its joins go.</summary>
/// <param name="TrimFrom">Left at the source.</param>
/// <param name="TrimTo">Left where it goes.</param>
/// <param name="MostJoins">By policy.</param>
/// <param name="IsLeftAtSource">Whether what is left over is coiled at the source. Common practice: at the microphone and in front of the performer,
/// at the unit and not in the distribution; of what goes out into the hall, on the stage.</param>
internal sealed record RunUse(Figure<Length> TrimFrom, Figure<Length> TrimTo, Figure<int> MostJoins, bool IsLeftAtSource)
{
    /// <summary>The use of a link.</summary>
    /// <param name="link">What is connected.</param>
    /// <param name="route">Its way; null where it is unknown.</param>
    /// <param name="distributions">Names of the distributions: what goes to one is a feeder.</param>
    /// <param name="policies">Trims and joins.</param>
    public static RunUse Of(Link link, Route? route, IReadOnlySet<string> distributions, CablePolicies policies)
    {
        var (trims, joins) = (policies.Trims, policies.Joins);
        var lead = Trim("lead", trims.Lead);
        var hall = Trim("hall", trims.Hall);
        var isStageSource = route?.Legs is [{ IsOnDeck: true }, ..];
        return link.Carries switch
        {
            "mains" when distributions.Contains(link.To.Port.Device) =>
                new(Trim("feeder-source", trims.FeederSource), Trim("feeder-box", trims.FeederBox), Joins("feeder", joins.Feeder), IsLeftAtSource: false),
            "mains" => new(lead, lead, Joins("mains", joins.Mains), IsLeftAtSource: false),
            "network" => route?.IsInHall == true
                ? new(hall, hall, Joins("network", joins.Network), isStageSource)
                : new(lead, lead, Joins("network", joins.Network), IsLeftAtSource: false),
            "lighting-control" => new(lead, lead, Joins("lighting-control", joins.LightingControl), IsLeftAtSource: false),
            "mic-line" or "line" when IsMulti(link) && route?.IsInHall == true => new(hall, hall, Joins("network", joins.Network), isStageSource),
            "mic-line" or "line" when IsFromStand(link) =>
                new(Trim("mic-stand", trims.MicStand), Trim("mic-box", trims.MicBox), Joins("mic", joins.Mic), IsLeftAtSource: true),
            "mic-line" or "line" => new(lead, lead, Joins("mic", joins.Mic), IsLeftAtSource: false),
            _ => new(lead, lead, Joins("loudspeaker", joins.Loudspeaker), IsLeftAtSource: false),
        };
    }

    // A source that stands for itself has one connector without a number; a device has numbered ones, or is linked through.
    private static bool IsFromStand(Link link) => link.From.Port is { Kind: Domain.Facts.PortKind.Output, Number: null };

    private static bool IsMulti(Link link) =>
        LeadPlug.Read(link.From.Connector).Count > 1 || link.From.Connector.StartsWith("multipin", StringComparison.Ordinal);

    private static Figure<Length> Trim(string key, Length length) => Figure.Policy($"cables / trims / {key}", length);

    private static Figure<int> Joins(string key, int most) => Figure.Policy($"cables / joins / {key}", most);
}

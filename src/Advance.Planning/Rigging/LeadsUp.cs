using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What leads weigh that end on something that hangs: all of each, at most what it can be, since a part of it lies on the floor.</summary>
internal sealed class LeadsUp(Brief brief, CablePlan cables)
{
    private const string Margin = "weight-margin";

    private static readonly Figure<Mass> Unknown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>The hoists whose bodies hang at what they lift, so that their leads do.</summary>
    /// <param name="picks">Of one truss or one hang.</param>
    public static IEnumerable<string> Motors(IEnumerable<PlacedPick> picks) => picks.Where(pick => pick is { Hoist: not null, Pick.BodyUp: false }).Select(pick => pick.Hoist!.Name);

    /// <summary>How many leads end on devices of these names, and what they weigh together; null where none does.</summary>
    /// <param name="name">Of what they hang on.</param>
    /// <param name="devices">What hangs there.</param>
    public (int Count, Figure<Mass> Weight)? On(string name, IReadOnlySet<string> devices)
    {
        var leads = cables.Runs.Where(run => run.Links.Any(link => devices.Contains(link.From.Port.Device) || devices.Contains(link.To.Port.Device))).SelectMany(run => run.Leads).ToList();
        if (leads.Count == 0)
        {
            return null;
        }

        var weight = Sum.Of($"{name}, leads that end on it", "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", leads.Select(WeightOf))
            .Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
        return (leads.Count, weight with { RestsOn = weight.RestsOn.With(cables.RestsOn) });
    }

    /// <summary>A weight with the margin of how it is known.</summary>
    public Figure<Mass> Margined(string what, Figure<Mass> mass, Known how) =>
        Sum.Of($"weight of {what}", "w = m · (1 + g / 100)", Publication.CommonPractice)
            .Put("m", mass)
            .Put("g", Figure.Policy(Margin, brief.Company.Policies.WeightMargin.On(how)))
            .Gives((bare, margin) => bare * (1 + (margin / 100)));

    private Figure<Mass> WeightOf(Kind lead) => lead.Cable!.WeightPerLength is { } given
        ? Sum.Of($"weight of {lead.Id}", "w = m · l", Publication.Arithmetic).Put("m", Figure.From(given)).Put("l", Figure.From(lead.Cable.Length)).Gives((per, length) => Mass.FromKilograms(per.KilogramsPerMeter * length.Meters))
        : Margined(lead.Id, lead.Weight is { } weight ? Figure.From(weight) : Unknown, lead.Weight?.How ?? Known.Estimated);
}

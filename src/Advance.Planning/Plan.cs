using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary>Everything worked out from the brief. All sheets are printed from it and from nothing else.</summary>
/// <param name="Brief">What it was worked out from.</param>
/// <param name="Stage">What stands where.</param>
/// <param name="Sound">The sound system.</param>
/// <param name="Drive">How the signal gets to every box.</param>
/// <param name="Lighting">Fixtures and stands.</param>
/// <param name="Power">Services, distributions, circuits.</param>
/// <param name="Patch">What is patched to what.</param>
/// <param name="Cables">Every run and its leads.</param>
/// <param name="Stock">What the shop pulls.</param>
/// <param name="Voltage">What comes out at the end of each lead.</param>
/// <param name="Protection">What leads carry where they lie, and whether faults are cleared.</param>
/// <param name="Rigging">What hangs, and what that asks of hoists, points and the roof.</param>
/// <param name="Load">What that weighs.</param>
/// <param name="Standing">What stands, and what wind and people it stands up to.</param>
/// <param name="Crew">What is done by whom, in order.</param>
/// <param name="Pieces">Every physical thing, in the order of their addresses.</param>
/// <param name="Links">Every connection, in the order of their addresses.</param>
/// <param name="Findings">What the rules have to say, heaviest first.</param>
public sealed record Plan(
    Brief Brief,
    StagePlan Stage,
    SoundPlan Sound,
    DrivePlan Drive,
    LightingPlan Lighting,
    PowerPlan Power,
    PatchPlan Patch,
    CablePlan Cables,
    StockPlan Stock,
    VoltagePlan Voltage,
    ProtectionPlan Protection,
    RiggingPlan Rigging,
    LoadPlan Load,
    StandingPlan Standing,
    CrewPlan Crew,
    IReadOnlyList<Piece> Pieces,
    IReadOnlyList<Link> Links,
    IReadOnlyList<Finding> Findings)
{
    /// <summary>The first day that the public comes, or the first day there is; null where its date is unknown.</summary>
    public DateOnly? ShowDate
    {
        get
        {
            var days = Brief.Gig.Days;
            var day = days.FirstOrDefault(day => day.Kind == Domain.Gigs.DayKind.Show) ?? (days.Count > 0 ? days[0] : null);
            return day is not null && day.Date.Is(out WrittenDate date) && date.Year is { } year ? date.Resolve(new DateOnly(year, 1, 1)) : null;
        }
    }

    /// <summary>Every figure that is printed with its working or may be asked about, in the order of the addresses.</summary>
    public IReadOnlyList<Stated> Figures { get; } =
    [
        .. new[] { Stage.Figures, Sound.Figures, Drive.Figures, Lighting.Figures, Power.Figures, Patch.Figures, Cables.Figures, Stock.Figures, Voltage.Figures, Protection.Figures, Rigging.Figures, Load.Figures, Standing.Figures, Crew.Figures }
            .SelectMany(figures => figures)
            .OrderBy(stated => stated.Address),
    ];

    /// <summary>The address under which a figure of this plan is stated; null where it is not.</summary>
    public string? AddressOf(object figure) => Addresses.GetValueOrDefault(figure);

    /// <summary>What was chosen, for the next issue to stay near to.</summary>
    public Choices Chosen { get; } =
        new(new[] { Patch.Chosen, Drive.Chosen, Lighting.Chosen, Power.Chosen, Cables.Chosen }.SelectMany(choices => choices.InOrder));

    // By the figure itself, not by what it says: two figures may well be equal. Made when first asked; made twice it is the same.
    private Dictionary<object, string> Addresses => field ??= Index(Figures);

    /// <summary>Whether something keeps the package from being issued.</summary>
    public bool IsStopped => Findings.Any(finding => finding.Stops);

    private static Dictionary<object, string> Index(IReadOnlyList<Stated> figures)
    {
        var index = new Dictionary<object, string>(ReferenceEqualityComparer.Instance);
        foreach (var stated in figures)
        {
            index.TryAdd(stated.Figure, stated.Address.Text);
        }

        return index;
    }
}

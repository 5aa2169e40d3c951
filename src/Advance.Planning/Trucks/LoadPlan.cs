using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What it all weighs, and how it gets there.</summary>
/// <param name="Weight">Of everything pulled without cases and vehicles, with margins; unknown where one weight is.</param>
/// <param name="Pieces">How many are pulled, without cases and vehicles; unknown where one count is.</param>
/// <param name="Unweighed">Ids of kinds on the pull list whose weight nobody knows.</param>
public sealed record LoadPlan(Figure<Mass> Weight, Figure<int> Pieces, IReadOnlyList<string> Unweighed)
{
    /// <summary>Of everything with its cases, and of what is allowed for: what the vehicles carry; unknown where one weight is.</summary>
    public required Figure<Mass> Gross { get; init; }

    /// <summary>What stands for kit that is not chosen yet, in the order written.</summary>
    public IReadOnlyList<WeightAllowance> Allowances { get; init; } = [];

    /// <summary>How many cases and loose pieces are carried in and out.</summary>
    public required Figure<int> Units { get; init; }

    /// <summary>Against what the vehicles carry and hold; null where the gig names none.</summary>
    public required TruckLoad? Truck { get; init; }

    /// <summary>The first to go in comes first: what is needed first goes in last.</summary>
    public required IReadOnlyList<LoadRow> InOrder { get; init; }

    /// <summary>Everything that must come in, at every narrow place of the way.</summary>
    public required IReadOnlyList<Passage> Passages { get; init; }

    /// <summary>What each department of the shop sends along, in the order of the pull list; vehicles send nothing.</summary>
    public required IReadOnlyList<DepartmentLoad> Departments { get; init; }

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address.Of("load") / "weight", "weight of all that is pulled, without cases", Weight),
        Stated.Of(Address.Of("load") / "pieces", "pieces pulled", Pieces),
        Stated.Of(Address.Of("load") / "gross", "weight of the load with its cases", Gross),
        Stated.Of(Address.Of("load") / "units", "cases and loose pieces", Units),
        .. Departments.SelectMany(department => department.Figures),
        .. Allowances.Select(allowance => allowance.Figure),
        .. Truck?.Figures ?? [],
        .. Passages.SelectMany(passage => passage.Figures),
    ];
}

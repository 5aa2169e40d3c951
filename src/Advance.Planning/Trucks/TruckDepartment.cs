using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Brings the vehicles, and adds up what goes into them and through the doors.</summary>
public static class TruckDepartment
{
    private const string Name = "transport";

    /// <summary>The vehicles, each with what always goes with it.</summary>
    public static IReadOnlyList<Piece> Place(Gig gig, Stock stock)
    {
        var pieces = new Pieces(Name, stock);
        foreach (var truck in gig.Trucks)
        {
            pieces.Ask(pieces.At(truck.Name), truck.Name, truck.Item.Or("TBC"), from: null, spot: null, truck.At);
        }

        return pieces.Made;
    }

    /// <summary>What it all weighs, whether it goes into the vehicles and through the doors, and in which order it is loaded.</summary>
    public static LoadPlan Settle(Brief brief, Backbone backbone, StockPlan pull, CrewPlan crew)
    {
        var policies = brief.Company.Policies;
        var lines = pull.Lines.Where(line => line.Kind?.Role is not (Role.Case or Role.Truck)).ToList();
        var allowances = WeightAllowance.Of(brief.Gig, lines, policies);
        return new LoadPlan(WeightOf(lines, policies), PiecesOf(lines), Unweighed(pull))
        {
            Gross = GrossOf(pull.Units, allowances),
            Allowances = allowances,
            Units = UnitsOf(pull.Units),
            Truck = TruckLoads.Of(brief.Gig, brief.Stock, pull.Units, allowances, policies.Truck),
            InOrder = LoadOrder.Of(backbone, pull, crew),
            Passages = AccessDepartment.Settle(brief.Venue, pull.Units, policies),
            Departments = [.. lines.GroupBy(line => line.Kind?.Department ?? "", StringComparer.Ordinal).Select(group => DepartmentOf(group.Key, [.. group], pull.Units, policies))],
        };
    }

    private static DepartmentLoad DepartmentOf(string name, IReadOnlyList<StockLine> lines, IReadOnlyList<TravellingUnit> units, Policies policies)
    {
        var own = units.Where(unit => unit.Department == name).ToList();
        var cases = own.Where(unit => unit.IsCase).ToList();
        return new DepartmentLoad(name, lines, PiecesOf(lines), UnitsOf(cases), WeightOf(lines, policies), GrossOf(own, []));
    }

    private static Figure<Mass> WeightOf(IEnumerable<StockLine> lines, Policies policies) =>
        Sum.Of("weight pulled", "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", lines.Select(line => Weights.Of(line.Item, line.Kind, line.Total, policies.WeightMargin)))
            .Gives(Total);

    private static Figure<int> PiecesOf(IEnumerable<StockLine> lines) =>
        Sum.Of("pieces pulled", "N = Σ tᵢ", Publication.Arithmetic).PutAll("tᵢ", lines.Select(line => line.Total)).Gives(terms => terms.Values.Sum());

    private static List<string> Unweighed(StockPlan pull) => [.. pull.Lines.Where(line => line.Kind?.Weight is not { IsKnown: true }).Select(line => line.Item)];

    private static Figure<Mass> GrossOf(IEnumerable<TravellingUnit> units, IEnumerable<WeightAllowance> allowances) =>
        Sum.Of("weight of the load", "W = Σ uᵢ", Publication.Arithmetic)
            .PutAll("uᵢ", units.Select(GrossOf).Concat(allowances.Select(allowance => allowance.Left)))
            .Gives(Total);

    private static Figure<Mass> GrossOf(TravellingUnit unit) => unit.Count == 1
        ? unit.Gross
        : Sum.Of($"weight of {unit.Item}", "u = n · G", Publication.Arithmetic)
            .Put("n", Figure.Count(unit.Count))
            .Put("G", unit.Gross)
            .Gives((count, gross) => gross * count);

    private static Figure<int> UnitsOf(IReadOnlyList<TravellingUnit> units) =>
        new(units.Sum(unit => unit.Count), units.Aggregate(Domain.Facts.Doubts.None, (sum, unit) => sum.With(unit.Gross.RestsOn)), Reason.Derived.It);

    private static Mass Total(Terms<Mass> terms) => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass);
}

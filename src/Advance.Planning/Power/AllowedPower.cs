using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Hangs allowances on the supply: on the service or the distribution that each names, or on the only service. Watts are taken as volt-amperes,
/// spread evenly over the legs. Common practice, no source.
/// </summary>
internal sealed class AllowedPower
{
    private static readonly PowerUse[] OfSound = [PowerUse.Loudspeaker, PowerUse.Monitor, PowerUse.Sound];

    private readonly List<(IReadOnlyList<Allowance> Rows, PowerNode? Node)> rows;

    private AllowedPower(List<(IReadOnlyList<Allowance> Rows, PowerNode? Node)> rows) => this.rows = rows;

    /// <summary>Those of a gig that are power, or may be.</summary>
    public static AllowedPower Of(Gig gig, SupplyTree tree) =>
        new([.. gig.Allowances.Where(row => row.MayDraw)
            .GroupBy(row => (What: row.What.Trim().ToUpperInvariant(), Node: NodeOf(row, tree)))
            .Select(group => ((IReadOnlyList<Allowance>)[.. group], group.Key.Node))]);

    /// <summary>All of them, with what is left once everything hangs.</summary>
    public IReadOnlyList<PowerAllowance> All() => [.. rows.Select(AllowanceOf)];

    /// <summary>On each line of a place and of everything below it.</summary>
    public IEnumerable<(PowerAllowance Allowance, int Line)> On(PowerNode node) =>
        from one in rows
        where one.Node is { } hung && hung.Upwards.Contains(node)
        let allowance = AllowanceOf(one)
        from line in one.Node!.Lines
        select (allowance, line);

    /// <summary>What is left of those that hang on that very place, once all of some loads hang there too: for choosing, before anything hangs.</summary>
    public IEnumerable<Figure<ElectricCurrent>> Before(PowerNode node, IReadOnlyList<PowerLoad> loads) =>
        rows.Where(one => one.Node == node).Select(one => Left(one.Rows, node, "in use", loads, load => load.InUse));

    private static PowerNode? NodeOf(Allowance row, SupplyTree tree)
    {
        if (row.FedBy.Length == 0)
        {
            return tree.Services.Count == 1 ? tree.Services[0] : null;
        }

        return tree.Services.FirstOrDefault(node => Same(node.Name, row.FedBy))
            ?? tree.Distribution(row.FedBy)
            ?? tree.Services.FirstOrDefault(node => Same(node.Service!.Name, row.FedBy));
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static PowerAllowance AllowanceOf((IReadOnlyList<Allowance> Rows, PowerNode? Node) one)
    {
        if (one.Node is not { } node)
        {
            var unknown = new Figure<ElectricCurrent>(null, Doubts.Of(one.Rows[0].Doubt), Reason.Derived.It);
            return new PowerAllowance(one.Rows[0], "", unknown, unknown);
        }

        var loads = LoadsOn(node).ToList();
        return new PowerAllowance(
            one.Rows[0], node.Name, Left(one.Rows, node, "in use", loads, load => load.InUse), Left(one.Rows, node, "at most", loads, load => load.AtMost));
    }

    private static IEnumerable<PowerLoad> LoadsOn(PowerNode node) => (node.Chain?.Loads ?? []).Concat(node.Children.SelectMany(LoadsOn));

    private static Figure<ElectricCurrent> Left(
        IReadOnlyList<Allowance> rows, PowerNode node, string how, IReadOnlyList<PowerLoad> loads, Func<PowerLoad, Figure<ElectricCurrent>> draw) =>
        Sum.Of($"allowance for {rows[0].What} on {node.Name}, what is left on each leg, {how}", "I = max(0, P - U · k) / (n · U)", Publication.CommonPractice)
            .Put("P", Written(rows))
            .Put("U", VoltageOf(node))
            .Put("k", Chosen(rows[0], loads.Where(load => IsOf(load, rows[0].What)).Select(draw)))
            .Put("n", Figure.Count(node.Legs.Count))
            .Gives((watts, volts, taken, legs) => ElectricCurrent.FromAmperes(Math.Max(0, (double)watts.Watts - (volts.Volts * taken.Amperes)) / (legs * volts.Volts)));

    // Two rows for the same on the same are one allowance, or what is there would be taken off twice.
    private static Figure<UnitsNet.Power> Written(IReadOnlyList<Allowance> rows) => rows.Count == 1
        ? Written(rows[0])
        : Sum.Of($"allowance for {rows[0].What}", "P = Σ pᵢ", Publication.Arithmetic)
            .PutAll("pᵢ", rows.Select(Written))
            .Gives(terms => UnitsNet.Power.FromWatts(terms.Values.Sum(power => power.Watts)));

    private static Figure<UnitsNet.Power> Written(Allowance row) =>
        row.Draw is { } given ? Figure.From(given) : new Figure<UnitsNet.Power>(null, Doubts.Of(row.Doubt), Reason.Derived.It);

    private static Figure<ElectricCurrent> Chosen(Allowance row, IEnumerable<Figure<ElectricCurrent>> draws) =>
        Sum.Of($"{row.What} that hangs there already", "k = Σ iᵢ", Publication.Arithmetic)
            .PutAll("iᵢ", draws)
            .Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(one => one.Amperes)));

    private static Figure<ElectricPotential> VoltageOf(PowerNode node)
    {
        var service = node.Root.Service;
        return new Figure<ElectricPotential>(node.Supply?.Voltages[0].Least, Doubts.Of(service?.Supply.Doubt), new Reason.Fixed(service?.Supply.At ?? Mark.Nowhere));
    }

    // What an allowance is for is a department, or an act.
    private static bool IsOf(PowerLoad load, string what) => what.Trim().ToUpperInvariant() switch
    {
        "LIGHTING" or "LIGHTS" => load.Use == PowerUse.Lighting,
        "SOUND" => OfSound.Contains(load.Use),
        "BACKLINE" => load.Use == PowerUse.Backline,
        _ => load.Act is { } act && Same(act, what.Trim()),
    };
}

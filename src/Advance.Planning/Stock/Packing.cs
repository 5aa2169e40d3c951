using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Puts what is pulled into cases, shelf by shelf: as many full cases of one kind as there are, the rest into the first case of that kind and
/// department that has room. What packs into nothing travels loose.
/// </summary>
internal sealed class Packing
{
    private readonly Stock stock;
    private readonly List<OpenCase> cases = [];
    private readonly List<(StockLine Line, int Count)> loose = [];
    private readonly Dictionary<string, Queue<Piece>> asked;
    private readonly Dictionary<(string Kind, string Department), Doubts> doubts = [];
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);

    private Packing(Stock stock, IEnumerable<Piece> asked)
    {
        this.stock = stock;
        this.asked = asked.GroupBy(piece => piece.Item, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => new Queue<Piece>(group), StringComparer.Ordinal);
    }

    /// <summary>Packs it all.</summary>
    /// <param name="lines">What is pulled but cases, in the order of the shelves.</param>
    /// <param name="builtIn">Cases that were asked for, with what stands in them.</param>
    /// <param name="stock">Where kinds of case are looked up.</param>
    /// <param name="margins">On weights.</param>
    public static IReadOnlyList<TravellingUnit> Pack(
        IReadOnlyList<StockLine> lines, IReadOnlyList<BuiltIn> builtIn, Stock stock, WeightMargins margins)
    {
        var packing = new Packing(stock, builtIn.Where(found => found.Devices.Count == 0).Select(found => found.Case));
        packing.BuildIn(builtIn.Where(found => found.Devices.Count > 0));
        var inRacks = builtIn.SelectMany(found => found.Devices).CountBy(device => device.Item, StringComparer.Ordinal)
            .ToDictionary(StringComparer.Ordinal);
        foreach (var line in lines)
        {
            packing.Put(line, (line.Total.Value ?? 0) - inRacks.GetValueOrDefault(line.Item));
        }

        packing.AddEmpty();
        return [.. packing.cases.Select(packed => packed.Close(packing.DoubtsOf(packed.Kind.Id, packed.Department), margins)), .. packing.loose.Select(rest => LooseOf(rest.Line, rest.Count, margins))];
    }

    private void BuildIn(IEnumerable<BuiltIn> racks)
    {
        foreach (var rack in racks)
        {
            var packed = Named(rack.Case);
            foreach (var group in rack.Devices.GroupBy(device => device.Item, StringComparer.Ordinal))
            {
                packed.Put(new Packed(group.Key, group.First().Kind, group.Count()), share: 1);
            }
        }
    }

    private void Put(StockLine line, int count)
    {
        if (line.Kind is not { Packs: { } packs } kind || stock.Find(packs.Item) is not { } caseKind)
        {
            AddLoose(line, count);
            return;
        }

        doubts[(caseKind.Id, kind.Department)] = DoubtsOf(caseKind.Id, kind.Department).With(line.Total.RestsOn);
        for (; count >= packs.Count; count -= packs.Count)
        {
            Open(caseKind, kind.Department).Put(new Packed(line.Item, kind, packs.Count), share: 1);
        }

        if (count > 0)
        {
            var share = (double)count / packs.Count;
            FirstWithRoom(caseKind, kind.Department, share).Put(new Packed(line.Item, kind, count), share);
        }
    }

    private Doubts DoubtsOf(string kind, string department) => doubts.GetValueOrDefault((kind, department), Doubts.None);

    private void AddLoose(StockLine line, int count)
    {
        if (count > 0 && line.Kind?.Role != Role.Truck)
        {
            loose.Add((line, count));
        }
    }

    private OpenCase FirstWithRoom(Kind kind, string department, double share) =>
        cases.FirstOrDefault(open => open.Kind.Id == kind.Id && open.Department == department && open.HasRoom(share)) ?? Open(kind, department);

    // A case that somebody asked for is filled before another is taken off the shelf.
    private OpenCase Open(Kind kind, string department)
    {
        if (asked.TryGetValue(kind.Id, out var waiting) && waiting.TryDequeue(out var piece))
        {
            return Named(piece, department);
        }

        var key = $"{kind.Id}/{department}";
        var number = numbers[key] = numbers.GetValueOrDefault(key) + 1;
        return Add(new OpenCase(Address.Of("case") / kind.Id / department / number, $"{kind.Id} {department} {number}", kind, department));
    }

    private OpenCase Named(Piece piece, string department = "") =>
        Add(new OpenCase(piece.Address / "case", piece.Name, piece.Kind!, department));

    private OpenCase Add(OpenCase open)
    {
        cases.Add(open);
        return open;
    }

    // What was asked for and not filled travels empty.
    private void AddEmpty()
    {
        foreach (var piece in asked.Values.SelectMany(waiting => waiting))
        {
            Named(piece);
        }
    }

    private static TravellingUnit LooseOf(StockLine line, int count, WeightMargins margins) => new(
        Address.Of("loose") / line.Item, line.Kind?.Name ?? line.Item, line.Item, line.Kind, count, [], OneOf(line, margins));

    // Whether there is one at all is as doubtful as how many there are.
    private static Figure<Mass> OneOf(StockLine line, WeightMargins margins)
    {
        var one = Weights.OfOne(line.Item, line.Kind, margins);
        return one with { RestsOn = one.RestsOn.With(line.Total.RestsOn) };
    }
}

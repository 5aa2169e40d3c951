using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Finds everything on the way to a box that parts lows from highs.</summary>
/// <param name="units">Devices and boxes.</param>
/// <param name="outputs">Outputs of processors with what is set on them.</param>
internal sealed class CrossingSurvey(SoundUnits units, IReadOnlyDictionary<Port, DriveOutput> outputs)
{
    /// <summary>From the desk to the box, the box itself last.</summary>
    public IEnumerable<Crossing> Of(StackPlan stack, StackedBox box, SignalPath path) =>
        [.. path.Links.SelectMany(link => OnTheWay(link.From.Port, stack, box)), .. Own(stack, box)];

    private IEnumerable<Crossing> OnTheWay(Port port, StackPlan stack, StackedBox box)
    {
        if (outputs.TryGetValue(port, out var output))
        {
            return InOutput(output, stack, box);
        }

        return units.Box(port.Device) is { Box: var before } ? InLink(before, stack) : [];
    }

    private static IEnumerable<Crossing> InOutput(DriveOutput output, StackPlan stack, StackedBox box)
    {
        var device = output.Device;
        if (output.Set.HighPass is { } high)
        {
            yield return new Crossing(device.Name, Filter.HighPass, high, Can(device.Kind, Filter.HighPass), output.Row?.HighPass is not null);
        }

        if (output.Set.LowPass is { } low)
        {
            yield return new Crossing(device.Name, Filter.LowPass, low, Can(device.Kind, Filter.LowPass), output.Row?.LowPass is not null);
        }

        var wanted = box.IsSub ? Filter.LowPass : Filter.HighPass;
        if (IsSaidIn(stack, device.Name) && (wanted == Filter.LowPass ? output.Set.LowPass : output.Set.HighPass) is null)
        {
            yield return new Crossing(device.Name, wanted, Said(stack), IsDone: false, MayProtect: false);
        }
    }

    private static IEnumerable<Crossing> InLink(StackedBox before, StackPlan stack) => before.HandsOn switch
    {
        "high-passed" => [new Crossing(before.Piece.Item, Filter.HighPass, IsSaidIn(stack, before.Piece.Item) ? Said(stack) : NotSaid, IsDone: true, MayProtect: false)],
        "" => [new Crossing(before.Piece.Item, Filter.HighPass, NotSaid, IsDone: null, MayProtect: false)],
        _ => [],
    };

    // A sub that hands on only the highs keeps the lows for itself.
    private static IEnumerable<Crossing> Own(StackPlan stack, StackedBox box)
    {
        var isSaid = IsSaidIn(stack, box.Piece.Item);
        if (isSaid || box.IsCrossing)
        {
            var filter = box.IsSub ? Filter.LowPass : Filter.HighPass;
            yield return new Crossing(box.Piece.Item, filter, isSaid ? Said(stack) : NotSaid, Can(box.Piece.Kind, filter), MayProtect: false);
        }
    }

    private static Figure<Frequency> NotSaid => new(null, Doubts.None, Reason.Derived.It);

    private static Figure<Frequency> Said(StackPlan stack) => Figure.From(stack.Stack.Crossover!.Value.Select(crossover => crossover.Frequency));

    private static bool IsSaidIn(StackPlan stack, string name) =>
        stack.Stack.Crossover is { } given && given.Is(out var crossover) && crossover.Within == name;

    // Where the stock does not say which filters there are, the gig is believed.
    private static bool Can(Kind? kind, Filter filter) => kind?.Loudspeaker?.Filters is not { Count: > 0 } filters || filters.Contains(filter);
}

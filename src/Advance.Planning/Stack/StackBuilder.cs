using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Builds stacks from the floor up and hangs from the top down: boxes, what joins them, how high and heavy it gets.</summary>
/// <param name="company">For the usual aim and the margins on weights.</param>
/// <param name="stock">Where joints are found.</param>
/// <param name="pieces">Where boxes and joints are asked for.</param>
/// <param name="drawn">Where stacks are drawn.</param>
internal sealed class StackBuilder(Company company, Stock stock, Pieces pieces, Drawn drawn)
{
    /// <summary>The stack, or the two of a mirrored pair.</summary>
    public IEnumerable<StackPlan> Build(Stack stack)
    {
        foreach (var one in Mirrored.Each(stack.Name, stack.Sides))
        {
            yield return Build(stack, one);
        }
    }

    private StackPlan Build(Stack stack, Mirrored one)
    {
        var address = pieces.At(one.Name);
        var spot = drawn.Find(stack.Place, one.Side);
        var before = pieces.Made.Count;
        var (frame, boxes) = stack.Flown is null
            ? (null, Pairs.Mark(Join(Raise(Subs.Mark(stack, BoxesOf(stack, stack.Boxes, address, one.Name, spot))))))
            : Hang(stack, address, one.Name, spot);
        AskForStraps(stack, address, one.Name, spot);
        Ballasts.Ask(pieces, stack.Ballast, address, one.Name, spot);
        var turn = Turn(stack, one.Side, spot);
        if (stack.Flown is null)
        {
            drawn.Add(address, one.Name, Look.Stack, stack.Place, Footprint.Of(boxes.Count > 0 ? boxes[0].Piece.Kind : null), side: one.Side, turn: turn);
        }

        var ground = drawn.Ground.HeightAt(spot);
        var under = ground with { RestsOn = ground.RestsOn.With(Doubts.Of(stack.Place.Doubt)) };
        var foot = stack.Flown is null ? under : HangHeights.Bottom(stack, drawn.Ground);
        var height = StackFigures.Together("height of the boxes", boxes.Select(box => box.Height));
        return new StackPlan(address, one.Name, stack, boxes, Chains.PortOf(stack.FedBy, one.Index), Doubts.Of(stack.Place.Doubt).With(HangHeights.RestsOn(stack)))
        {
            Side = one.Side,
            Index = one.Index,
            Spot = spot,
            Turn = turn,
            HeardAt = stack.HeardAt is { } heard ? drawn.Find(heard, one.Side) : spot,
            On = drawn.Ground.On(spot),
            Frame = frame,
            FixedToFrame = [.. pieces.Made.Skip(before).Where(piece => piece.Address.Text.StartsWith((address / "fixed").Text + "/", StringComparison.Ordinal))],
            Under = under,
            LeadHeights = stack.Flown is null ? [] : HangHeights.Of(stack, boxes.Select(box => box.Piece.Kind), drawn.Ground, spot),
            Base = foot,
            Height = height,
            Top = StackFigures.Top(foot, height),
            Weight = StackFigures.Weight(pieces.Made.Skip(before), company.Policies.WeightMargin),
            Lift = Lift.Heaviest(Weighed(boxes), company.Policies.Lifts),
            Chains = Chains.Of(stack, address, boxes, one.Index),
        };
    }

    private List<StackedBox> BoxesOf(Stack stack, IEnumerable<CountedItem> items, Address address, string name, Spot? spot)
    {
        var boxes = new List<StackedBox>();
        foreach (var counted in items)
        {
            for (var number = 0; number < counted.Count; number++)
            {
                var position = boxes.Count + 1;
                var piece = pieces.Ask(address / position, $"{name} {position}", counted.Item, from: null, spot, stack.At);
                boxes.Add(new StackedBox(piece, counted.Stance) { Position = position, Height = StackFigures.HeightOf(piece.Kind) });
            }
        }

        return boxes;
    }

    private static IEnumerable<(string Item, Figure<UnitsNet.Mass> Weight)> Weighed(IEnumerable<StackedBox> boxes) =>
        boxes.Where(box => box.Piece.Kind?.Weight is not null).Select(box => (box.Piece.Item, Figure.From(box.Piece.Kind!.Weight!.Value)));

    private static IReadOnlyList<StackedBox> Raise(IReadOnlyList<StackedBox> boxes) =>
        [.. boxes.Select((box, index) => box with { Base = StackFigures.Together("height below", boxes.Take(index).Select(lower => lower.Height)) })];

    private List<StackedBox> Join(IReadOnlyList<StackedBox> boxes)
    {
        var joined = boxes.ToList();
        for (var upper = 1; upper < joined.Count; upper++)
        {
            if (JointOf(joined[upper - 1], joined[upper]) is { } joint)
            {
                joined[upper] = joined[upper] with { Joint = joint };
                pieces.Bring(joined[upper].Piece, new CountedItem(joint.Pieces, joint.Kind.Id), joint.Kind.At);
            }
        }

        return joined;
    }

    // What is written first is its frame; what follows and is no loudspeaker is fixed to that.
    private (StackedBox? Frame, IReadOnlyList<StackedBox> Boxes) Hang(Stack hang, Address address, string name, Spot? spot)
    {
        var items = HangItems.Of(hang, stock);
        var frame = items.Frame.Count == 0 ? null : new StackedBox(pieces.Ask(address / "frame", $"{name} frame", items.Frame[0].Item, from: null, spot, hang.At), Stance.Usual) { Position = 0 };
        foreach (var (number, other) in items.Frame.Skip(1).Index())
        {
            pieces.Ask(address / "fixed" / (number + 1), $"{name} {other.Item}", other.Item, from: null, spot, hang.At);
        }

        var boxes = Subs.Mark(hang, BoxesOf(hang, items.Boxes, address, name, spot)).ToList();
        for (var index = 0; index < boxes.Count; index++)
        {
            boxes[index] = boxes[index] with { Height = HangHeights.PinToPin(boxes[index].Piece.Kind) };
            if ((index > 0 ? boxes[index - 1] : frame) is { } above && JointOf(boxes[index], above, isHanging: true) is { } joint)
            {
                boxes[index] = boxes[index] with { Joint = joint };
                pieces.Bring(boxes[index].Piece, new CountedItem(joint.Pieces, joint.Kind.Id), joint.Kind.At);
            }
        }

        return (frame, boxes);
    }

    private StackJoint? JointOf(StackedBox lower, StackedBox upper, bool isHanging = false)
    {
        var (below, above) = (lower.TopFace, upper.BottomFace);
        var kind = string.IsNullOrEmpty(below) || string.IsNullOrEmpty(above)
            ? null
            : stock.Kinds.Values.FirstOrDefault(kind => kind.Joint is { } joint && joint.Use != (isHanging ? JointUse.Standing : JointUse.Hanging) && joint.Below == below && joint.Above == above);
        return kind?.Joint is { } found ? new StackJoint(kind, found.Pieces, found.Pins, found.Below, found.Above) : null;
    }

    private void AskForStraps(Stack stack, Address address, string name, Spot? spot)
    {
        for (var number = 1; number <= (stack.Strap?.Count ?? 0); number++)
        {
            pieces.Ask(address / "strap" / number, $"{name} strap", stack.Strap!.Item, from: null, spot, stack.At);
        }
    }

    // Toe-in turns a box on stage right towards stage left, anticlockwise as drawn with the audience at the foot.
    private double Turn(Stack stack, Side? side, Spot? spot) => (stack.Aim?.Or(company.Aim) ?? company.Aim) switch
    {
        Aim.Toed toed => toed.In.Degrees * ((side is { } said ? said == Side.StageRight : spot?.X < 0) ? -1 : 1),
        Aim.AtPlace at when spot is { } from && drawn.Find(Given.Of(at.Target, stack.At), side) is { } to => TurnTo(from, to),
        _ => 0,
    };

    // From straight downstage, which is down the page.
    private static double TurnTo(Spot from, Spot to) => -Math.Atan2(to.X - from.X, from.Y - to.Y) * 180 / Math.PI;
}

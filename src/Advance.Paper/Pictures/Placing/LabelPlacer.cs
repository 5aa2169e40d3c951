namespace Advance.Paper.Pictures.Placing;

/// <summary>
/// Places labels one after the other, each at the first of its places that is clear. The order is by rank and then by id, never by input,
/// and a label looks only at what is near it: a thing far away moves none.
/// </summary>
internal sealed class LabelPlacer(Obstacles obstacles, Box room, int numberWidth, int numberHeight)
{
    private const int Heap = 4;

    private readonly List<PlacedLabel> placed = [];
    private readonly Box drawing = obstacles.Bounds;
    private int numbers;

    /// <summary>Places labels; none is left out. One that found no place at all has a number and an empty box.</summary>
    public List<PlacedLabel> Place(IReadOnlyList<Named> symbols)
    {
        foreach (var named in symbols.OrderByDescending(n => n.Label.Rank).ThenBy(n => n.Id, StringComparer.Ordinal))
        {
            // Where many stand on one spot, labels close by would wall the others in: all are led out like rays.
            var isHeaped = IsHeaped(named, symbols);
            var label = (isHeaped ? null : Near(named, named.Width, named.Height))
                ?? WithLeader(named, named.Width, named.Height, isHeaped)
                ?? Numbered(named);
            placed.Add(label);
            if (label.Box.IsEmpty)
            {
                continue;
            }

            obstacles.Add(new Obstacle.Words("", label.Box.Grown(2)));
            if (label.Leader is { } leader)
            {
                obstacles.Add(new Obstacle.Wire(named.Id, leader));
            }
        }

        return placed;
    }

    private static bool IsHeaped(Named named, IReadOnlyList<Named> symbols)
    {
        var others = 0;
        foreach (var other in symbols)
        {
            if (!other.IsArea && other.Bounds.Meets(named.Bounds))
            {
                others++;
            }
        }

        return others > Heap;
    }

    private PlacedLabel? Near(Named named, int width, int height)
    {
        if (named.Label.MayStandInside && !named.IsDark)
        {
            foreach (var box in Candidates.Inside(named.Bounds, named.IsArea, width, height))
            {
                if (named.IsInside(box.Grown(3)) && IsClear(box, named))
                {
                    return new PlacedLabel(named.Id, named.Label, box) { IsInside = !named.IsArea };
                }
            }
        }

        foreach (var box in Candidates.Beside(named.Bounds, width, height))
        {
            if (named.IsOutside(box) && IsClear(box, named))
            {
                return new PlacedLabel(named.Id, named.Label, box);
            }
        }

        return null;
    }

    private PlacedLabel? WithLeader(Named named, int width, int height, bool isHeaped)
    {
        foreach (var box in Candidates.Around(named.Bounds, width, height, isHeaped))
        {
            if (Led(named, box) is { } label)
            {
                return label;
            }
        }

        return InMargin(named, width, height, passesThings: false);
    }

    private PlacedLabel? InMargin(Named named, int width, int height, bool passesThings)
    {
        foreach (var box in Candidates.Margin(named.Bounds, drawing, width, height))
        {
            if (Led(named, box, passesThings) is { } label)
            {
                return label;
            }
        }

        return null;
    }

    private PlacedLabel? Led(Named named, Box box, bool passesThings = false)
    {
        if (!named.IsOutside(box.Grown(2)) || !IsClear(box, named))
        {
            return null;
        }

        var leader = named.UpToEdge(Leader(named.Bounds, box));
        return obstacles.IsClear(leader, named.Id, passesThings) ? new PlacedLabel(named.Id, named.Label, box) { Leader = leader } : null;
    }

    private bool IsClear(Box box, Named named) => room.Holds(box) && obstacles.IsClear(box.Grown(2), named.Id);

    /// <summary>From the edge of the label that looks at the symbol to the symbol's middle.</summary>
    private static Segment Leader(Box symbol, Box label)
    {
        var x = Math.Clamp(symbol.MiddleX, label.Left, label.Right);
        var y = label.MiddleY;
        if (label.Left > symbol.MiddleX)
        {
            x = label.Left - 3;
        }
        else if (label.Right < symbol.MiddleX)
        {
            x = label.Right + 3;
        }
        else
        {
            y = label.MiddleY > symbol.MiddleY ? label.Top - 3 : label.Bottom + 3;
        }

        return new Segment(x, y, symbol.MiddleX, symbol.MiddleY);
    }

    private PlacedLabel Numbered(Named named)
    {
        numbers++;
        var label = Near(named, numberWidth, numberHeight)
            ?? OnTop(named)
            ?? WithLeader(named, numberWidth, numberHeight, isHeaped: false)
            ?? InMargin(named, numberWidth, numberHeight, passesThings: true)
            ?? new PlacedLabel(named.Id, named.Label, Box.Nothing);
        return label with { Number = numbers };
    }

    /// <summary>In a crowd a number stands on its own symbol, on a ground of paper.</summary>
    private PlacedLabel? OnTop(Named named)
    {
        var (x, y) = (named.Bounds.MiddleX - (numberWidth / 2), named.Bounds.MiddleY - (numberHeight / 2));
        var box = new Box(x, y, x + numberWidth, y + numberHeight);
        return IsClear(box, named) ? new PlacedLabel(named.Id, named.Label, box) : null;
    }
}

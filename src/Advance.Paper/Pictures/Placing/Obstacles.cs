namespace Advance.Paper.Pictures.Placing;

/// <summary>All that labels keep clear of, found by place.</summary>
internal sealed class Obstacles
{
    // 20 mm: a label meets few cells, and a cell few things.
    private const int Cell = 200;
    private const int Farthest = 20_000;

    private readonly Dictionary<(int X, int Y), List<Obstacle>> cells = [];

    /// <summary>The box around all of them.</summary>
    public Box Bounds { get; private set; } = Box.Nothing;

    /// <summary>Counts something in that is in nobody's way, as a grid.</summary>
    public void Cover(Box box) => Bounds = Bounds.With(box);

    public void Add(Obstacle obstacle)
    {
        var b = obstacle.Bounds;
        Cover(b);
        for (var x = Down(b.Left); x <= Down(b.Right); x++)
        {
            for (var y = Down(b.Top); y <= Down(b.Bottom); y++)
            {
                if (!cells.TryGetValue((x, y), out var list))
                {
                    cells[(x, y)] = list = [];
                }

                list.Add(obstacle);
            }
        }
    }

    /// <summary>True when nothing but the owner's own things is in the way of a label.</summary>
    public bool IsClear(Box box, string owner)
    {
        for (var x = Down(box.Left); x <= Down(box.Right); x++)
        {
            for (var y = Down(box.Top); y <= Down(box.Bottom); y++)
            {
                if (cells.TryGetValue((x, y), out var list))
                {
                    foreach (var obstacle in list)
                    {
                        if (obstacle.Owner != owner && obstacle.Meets(box))
                        {
                            return false;
                        }
                    }
                }
            }
        }

        return true;
    }

    /// <summary>True when nothing is in the way of a leader but the owner's own things and those that the owner stands in.</summary>
    /// <param name="line">From the label to the owner.</param>
    /// <param name="owner">The id of the symbol.</param>
    /// <param name="passesThings">True when it may run over other symbols, as in a crowd it must.</param>
    public bool IsClear(Segment line, string owner, bool passesThings = false)
    {
        var box = line.Bounds;
        for (var x = Down(box.Left); x <= Down(box.Right); x++)
        {
            for (var y = Down(box.Top); y <= Down(box.Bottom); y++)
            {
                if (cells.TryGetValue((x, y), out var list))
                {
                    foreach (var obstacle in list)
                    {
                        if (obstacle.Owner != owner && !(passesThings && obstacle is Obstacle.Thing)
                            && obstacle.Meets(line) && !obstacle.Holds(line.X2, line.Y2))
                        {
                            return false;
                        }
                    }
                }
            }
        }

        return true;
    }

    /// <summary>What lies farther off than any paper reaches shares the last cells.</summary>
    private static int Down(int value) => (int)Math.Floor(Math.Clamp(value, -Farthest, Farthest) / (double)Cell);
}

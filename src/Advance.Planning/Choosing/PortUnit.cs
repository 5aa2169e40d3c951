namespace Advance.Planning;

/// <summary>Wishes that are served together, with the same ports: one row, or one source that several acts share.</summary>
/// <param name="Wishes">Of as many lines each; no two are of one act. In the order of their addresses.</param>
internal sealed record PortUnit(IReadOnlyList<PortWish> Wishes)
{
    /// <summary>How many ports it wants.</summary>
    public int Count => Wishes[0].Count;

    /// <summary>The lowest channel of its first line in any act.</summary>
    public int First => Wishes.Min(wish => wish.First);

    /// <summary>Whether it is up for every act.</summary>
    public bool IsAllDay => Wishes[0].Act is null;

    /// <summary>Whether both cannot have the same port.</summary>
    public bool IsUpWith(PortUnit other) => Wishes.Any(wish => other.Wishes.Any(wish.IsUpWith));

    /// <summary>Whether it is up while an act plays.</summary>
    public bool IsUpFor(string? act) => IsAllDay || Wishes.Any(wish => wish.Act == act);
}

namespace Advance.Planning;

/// <summary>One way to serve a wish, with what it costs. Options are ordered by cost, then by place in the row; going without comes last.</summary>
/// <param name="Start">Place in the row of the first port; <see cref="None"/> for no port.</param>
/// <param name="Costs">By <see cref="PortAim"/>.</param>
internal sealed record PortOption(int Start, long[] Costs)
{
    /// <summary>No port.</summary>
    public const int None = int.MaxValue;

    /// <summary>What is worked out for each aim.</summary>
    public static readonly int Aims = Enum.GetValues<PortAim>().Length;

    /// <summary>Whether it has a port.</summary>
    public bool HasPort => Start != None;

    /// <summary>The cost towards one aim.</summary>
    public long Cost(PortAim aim) => Costs[(int)aim];

    /// <summary>Whether two wishes would use the same port.</summary>
    public bool Overlaps(int count, PortOption other, int otherCount) =>
        HasPort && other.HasPort && Start < other.Start + otherCount && other.Start < Start + count;
}

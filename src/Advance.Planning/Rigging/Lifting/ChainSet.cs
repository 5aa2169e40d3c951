namespace Advance.Planning;

/// <summary>
/// A set of chains taken as supports that push and pull: what each does when all hooks are level, and how much more for each metre that a hook is
/// high. Forces and heights are sums of these, so that many unevennesses cost a solve for each hook and not for each of them.
/// </summary>
internal sealed class ChainSet
{
    private readonly double[] levels;
    private readonly double[] heights;
    private readonly double[][] moreLevels;
    private readonly double[][] moreHeights;

    /// <summary>Of some chains.</summary>
    public ChainSet(PullOnly chains, IReadOnlyList<bool> set)
    {
        var count = set.Count;
        var level = chains.SolveOn(set, new double[count]);
        (levels, heights) = ([.. level.Reactions], [.. level.Heights]);
        (moreLevels, moreHeights) = (new double[count][], new double[count][]);
        for (var hook = 0; hook < count; hook++)
        {
            var offsets = new double[count];
            offsets[hook] = 1;
            var high = set[hook] ? chains.SolveOn(set, offsets) : level;
            moreLevels[hook] = [.. high.Reactions.Zip(levels, (more, less) => more - less)];
            moreHeights[hook] = [.. high.Heights.Zip(heights, (more, less) => more - less)];
        }
    }

    /// <summary>Forces and heights with hooks high or low.</summary>
    public (double[] Levels, double[] Heights) At(double[] offsets)
    {
        var (force, height) = ((double[])levels.Clone(), (double[])heights.Clone());
        for (var hook = 0; hook < force.Length; hook++)
        {
            var offset = offsets[hook];
            for (var chain = 0; offset != 0 && chain < force.Length; chain++)
            {
                force[chain] += offset * moreLevels[hook][chain];
                height[chain] += offset * moreHeights[hook][chain];
            }
        }

        return (force, height);
    }
}

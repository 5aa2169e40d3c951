namespace Advance.Planning;

/// <summary>Which options of each wish may be taken: all, or those alone that keep a promise made before.</summary>
/// <param name="Allowed">For each wish and each of its options.</param>
internal sealed record CircuitLeeway(IReadOnlyList<bool[]> Allowed)
{
    /// <summary>All options.</summary>
    public static CircuitLeeway All(CircuitProblem problem) => new([.. problem.Wishes.Select(wish => wish.Options.Select(_ => true).ToArray())]);

    /// <summary>
    /// Those of answers that break nothing, leave nothing dark and change nothing, as far as the score of one at hand says that there are such
    /// answers: what is worse than that need not be looked at.
    /// </summary>
    public static CircuitLeeway Of(CircuitProblem problem, CircuitScore score) => new(
    [
        .. problem.Wishes.Select(wish => wish.Options.Select(option =>
            (score.Broken > 0 || !wish.IsFixed || option.Keeps)
            && (score is not { Broken: 0, Dark: 0, Over: 0, Strain: 0, Changed: 0 } || wish.Earlier is not { } earlier || earlier == option.Group)).ToArray()),
    ]);

    /// <summary>With sound on some supplies alone, and lights off them if so wished.</summary>
    public CircuitLeeway On(CircuitProblem problem, IReadOnlySet<int> sound, bool areLightsApart) => new(
    [
        .. problem.Wishes.Select((wish, index) => wish.Options.Select((option, rank) => Allowed[index][rank] && wish.Earth switch
        {
            CircuitEarth.Sound => sound.Contains(problem.Groups[option.Group].Supply),
            CircuitEarth.Light => !areLightsApart || !sound.Contains(problem.Groups[option.Group].Supply),
            _ => true,
        }).ToArray()),
    ]);

    /// <summary>Whether each wish has an option left.</summary>
    public bool IsForAll => Allowed.All(options => options.Contains(true));
}

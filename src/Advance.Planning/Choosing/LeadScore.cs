namespace Advance.Planning;

/// <summary>How good a choice of leads is, in the order in which it matters; less is better.</summary>
/// <param name="Unmade">Runs without leads.</param>
/// <param name="Changed">Runs that were made of something else in the last issue.</param>
/// <param name="TooManyJoins">Joins beyond the policy.</param>
/// <param name="Joins">Joins.</param>
/// <param name="Laid">All leads together, in millimetres: of two choices that make the same runs, what lays less leaves less over.</param>
internal readonly record struct LeadScore(int Unmade, int Changed, int TooManyJoins, int Joins, long Laid) : IComparable<LeadScore>
{
    /// <summary>Scores a choice.</summary>
    public static LeadScore Of(IEnumerable<(LeadWish Wish, LeadChain? Chain)> chosen)
    {
        var score = default(LeadScore);
        foreach (var (wish, chain) in chosen)
        {
            score = new(
                score.Unmade + (chain is null ? 1 : 0),
                score.Changed + (wish.Earlier is { } earlier && chain?.Text != earlier ? 1 : 0),
                score.TooManyJoins + Math.Max(0, (chain?.Joins ?? 0) - wish.MostJoins),
                score.Joins + (chain?.Joins ?? 0),
                score.Laid + (chain?.Total ?? 0));
        }

        return score;
    }

    /// <inheritdoc/>
    public int CompareTo(LeadScore other) =>
        (Unmade, Changed, TooManyJoins, Joins, Laid).CompareTo((other.Unmade, other.Changed, other.TooManyJoins, other.Joins, other.Laid));
}

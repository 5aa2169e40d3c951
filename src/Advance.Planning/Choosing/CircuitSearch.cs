namespace Advance.Planning;

/// <summary>
/// Makes an answer better by one move, or by two wishes changing places, as long as that helps and the effort lasts. Effort is counted in
/// trials, never in time.
/// </summary>
internal sealed class CircuitSearch(CircuitProblem problem, CircuitLeeway leeway, CircuitLoading loading, IReadOnlyList<int> order, int effort)
{
    private readonly Dictionary<int, int>[] ranks = [.. problem.Wishes.Select(wish => wish.Options.Select((option, rank) => (option.Group, rank)).DistinctBy(one => one.Group).ToDictionary(one => one.Group, one => one.rank))];
    private int left = effort;

    /// <summary>Trials that are left.</summary>
    public int Left => left;

    /// <summary>Cools whatever is above the target; nothing that matters more gets worse.</summary>
    public void Cool() => Repeat((after, heat, before, warm) =>
    {
        var step = after.CompareHead(before);
        return step < 0 || (step == 0 && heat < warm && after.Use <= before.Use);
    }, wish => loading.IsHot(wish), () => loading.Heat > 0);

    /// <summary>Betters the whole score.</summary>
    public void Polish() => Repeat((after, _, before, _) => after.CompareTo(before) < 0, _ => true, () => true);

    private delegate bool Judge(CircuitScore after, long heat, CircuitScore before, long warm);

    // First everything that one move betters, then what an exchange does.
    private void Repeat(Judge isBetter, Func<int, bool> isMeant, Func<bool> isOpen)
    {
        var isMoving = true;
        while (isMoving && left > 0 && isOpen())
        {
            isMoving = false;
            foreach (var wish in order)
            {
                isMoving |= left > 0 && isMeant(wish) && Moves(wish, isBetter);
            }

            if (isMoving)
            {
                continue;
            }

            foreach (var wish in order)
            {
                isMoving |= left > 0 && isOpen() && isMeant(wish) && Swaps(wish, isBetter);
            }
        }
    }

    private bool Moves(int wish, Judge isBetter)
    {
        var options = problem.Wishes[wish].Options;
        for (var rank = 0; rank < options.Count && left > 0; rank++)
        {
            if (leeway.Allowed[wish][rank] && rank != loading.Of(wish) && loading.Free(options[rank].Group) > 0 && Try(wish, rank, -1, -1, isBetter))
            {
                return true;
            }
        }

        return false;
    }

    private bool Swaps(int wish, Judge isBetter)
    {
        foreach (var other in order)
        {
            var (own, its) = (loading.GroupOf(wish), loading.GroupOf(other));
            if (left > 0 && own != its && its >= 0
                && ranks[wish].TryGetValue(its, out var rank) && leeway.Allowed[wish][rank]
                && (own < 0 ? -1 : ranks[other].GetValueOrDefault(own, -2)) is var back and > -2 && (back < 0 || leeway.Allowed[other][back])
                && Try(wish, rank, other, back, isBetter))
            {
                return true;
            }
        }

        return false;
    }

    private bool Try(int wish, int rank, int other, int back, Judge isBetter)
    {
        left--;
        var (before, warm) = (loading.Score, loading.Heat);
        var (own, its) = (loading.Of(wish), other < 0 ? -1 : loading.Of(other));
        Place(wish, rank, other, back);
        if (isBetter(loading.Score, loading.Heat, before, warm))
        {
            return true;
        }

        Place(wish, own, other, its);
        return false;
    }

    private void Place(int wish, int rank, int other, int back)
    {
        loading.Lift(wish);
        if (other >= 0)
        {
            loading.Lift(other);
        }

        if (rank >= 0)
        {
            loading.Put(wish, rank);
        }

        if (other >= 0 && back >= 0)
        {
            loading.Put(other, back);
        }
    }
}

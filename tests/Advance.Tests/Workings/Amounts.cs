namespace Advance.Tests.Workings;

/// <summary>What stands for a symbol: one number, or a list of terms. Lists of one length go term by term, a number goes with each term.</summary>
internal readonly record struct Amounts(IReadOnlyList<double> Terms, bool IsList)
{
    public static Amounts One(double value) => new([value], false);

    public static Amounts List(IEnumerable<double> values) => new([.. values], true);

    /// <summary>The number.</summary>
    /// <exception cref="FormulaFault">It is a list that nothing has added up.</exception>
    public double Single => IsList ? throw new FormulaFault("a list stands where one number is wanted: Σ, max or min is missing") : Terms[0];

    public Amounts Each(Func<double, double> turn) => new([.. Terms.Select(turn)], IsList);

    public Amounts With(Amounts other, Func<double, double, double> join)
    {
        if (IsList && other.IsList && Terms.Count != other.Terms.Count)
        {
            throw new FormulaFault($"lists of {Terms.Count} and of {other.Terms.Count} terms do not go together");
        }

        var (left, right) = (this, other);
        var count = IsList ? Terms.Count : other.Terms.Count;
        return new([.. Enumerable.Range(0, count).Select(at => join(left.At(at), right.At(at)))], IsList || other.IsList);
    }

    private double At(int term) => IsList ? Terms[term] : Terms[0];
}

using Advance.Domain.Facts;

namespace Advance.Domain.Figures;

/// <summary>A number on paper: its value (null where it cannot be worked out), the open questions it rests on, and how it came about.</summary>
/// <typeparam name="T">A quantity or a number, in base units.</typeparam>
/// <param name="Value">Null is unknown, never zero.</param>
/// <param name="RestsOn">All doubts of all inputs.</param>
/// <param name="Why">Written, policy or worked out.</param>
/// <param name="How">The working; null for what was only written down.</param>
public sealed record Figure<T>(T? Value, Doubts RestsOn, Reason Why, Working? How = null)
    where T : struct, IComparable<T>
{
    /// <summary>Whether it holds against an upper limit, with a relative tolerance of 1e-9.</summary>
    public Verdict AtMost(Figure<T> limit) =>
        Value is { } value && limit.Value is { } most
            ? Closeness.IsAtMost(value, most) ? Verdict.Holds : Verdict.Fails
            : Verdict.CannotBeJudged;

    /// <summary>Whether it holds against a lower limit, with a relative tolerance of 1e-9.</summary>
    public Verdict AtLeast(Figure<T> limit) => limit.AtMost(this);
}

/// <summary>Makes figures that need no working.</summary>
public static class Figure
{
    /// <summary>What somebody wrote, as a figure.</summary>
    public static Figure<T> From<T>(Given<T> given)
        where T : struct, IComparable<T> =>
        new(given.Is(out var value) ? value : null, Doubts.Of(given.Doubt), new Reason.Fixed(given.At, given.How));

    /// <summary>What a policy says.</summary>
    public static Figure<T> Policy<T>(string name, T value)
        where T : struct, IComparable<T> => new(value, Doubts.None, new Reason.Policy(name));

    /// <summary>A count of things that stand in the plan.</summary>
    public static Figure<int> Count(int value) => new(value, Doubts.None, Reason.Derived.It);
}

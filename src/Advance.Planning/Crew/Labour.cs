using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Work in time of one person: minutes and hands by policy, times how many.</summary>
internal static class Labour
{
    /// <summary>No work.</summary>
    public static readonly Figure<Duration> None = new(Duration.Zero, Doubts.None, Reason.Derived.It);

    /// <summary>For so many of something.</summary>
    public static Figure<Duration> For(Figure<int> count, string policy, Work work) =>
        Sum.Of($"work, {policy}", "p = n · m · h", Publication.CommonPractice)
            .Put("n", count)
            .Put("m", Figure.Policy($"tasks {policy}", work.Time))
            .Put("h", Figure.Policy($"tasks {policy}", work.Hands))
            .Gives((many, time, hands) => time * many * hands);

    /// <summary>For a share of something that policy gives for so many at once.</summary>
    public static Figure<Duration> ForPart(Figure<int> count, int of, string policy, Work work) =>
        Sum.Of($"work, {policy}", "p = n / d · m · h", Publication.CommonPractice)
            .Put("n", count)
            .Put("d", Figure.Policy($"tasks {policy}", of))
            .Put("m", Figure.Policy($"tasks {policy}", work.Time))
            .Put("h", Figure.Policy($"tasks {policy}", work.Hands))
            .Gives((many, whole, time, hands) => time * ((double)many / whole) * hands);

    /// <summary>All of it.</summary>
    public static Figure<Duration> Together(IReadOnlyList<Figure<Duration>> parts) => parts.Count == 1
        ? parts[0]
        : Sum.Of("work", "P = Σ pᵢ", Publication.Arithmetic)
            .PutAll("pᵢ", parts)
            .Gives(terms => terms.Values.Aggregate(Duration.Zero, (sum, time) => sum + time));

    /// <summary>How long so many take for it.</summary>
    public static Figure<Duration> Shared(Figure<Duration> work, Figure<int> hands) =>
        Sum.Of("time", "T = P / k", Publication.Arithmetic)
            .Put("P", work)
            .Put("k", hands)
            .Gives((time, people) => time / people);
}

using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>A figure of the plan under its address: what is explained, measured beside, and printed with its working.</summary>
/// <param name="Address">Its name in the plan: <c>power/PD1/3/in-use</c>.</param>
/// <param name="What">What it is, in words.</param>
/// <param name="Value">A quantity or a number; null where it cannot be worked out.</param>
/// <param name="RestsOn">The open questions behind it.</param>
/// <param name="Why">Written, policy or worked out.</param>
/// <param name="How">Its working; null for what was only written down.</param>
public sealed record Stated(Address Address, string What, object? Value, Doubts RestsOn, Reason Why, Working? How)
{
    /// <summary>The figure itself, by which a sheet finds its address.</summary>
    public required object Figure { get; init; }

    /// <summary>States a figure.</summary>
    public static Stated Of<T>(Address address, string what, Figure<T> figure)
        where T : struct, IComparable<T> => new(address, what, figure.Value, figure.RestsOn, figure.Why, figure.How) { Figure = figure };
}

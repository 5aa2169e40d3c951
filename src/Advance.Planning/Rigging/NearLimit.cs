using System.Numerics;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Whether something bears what it is asked to, and hardly more.</summary>
internal static class NearLimit
{
    /// <summary>Whether a figure is within its limit and over a share of it.</summary>
    /// <param name="has">The figure.</param>
    /// <param name="may">Its limit.</param>
    /// <param name="use">In per cent of the limit.</param>
    public static bool Is<T>(Figure<T> has, Figure<T> may, double use)
        where T : struct, IComparable<T>, IMultiplyOperators<T, double, T> =>
        has.AtMost(may) == Verdict.Holds && has.AtMost(may with { Value = may.Value!.Value * (use / 100) }) == Verdict.Fails;
}

using System.Collections.Immutable;

namespace Advance.Handbook;

/// <summary>The harmonics in a current: for each order, its share of the fundamental (not of the whole), 0 or more.</summary>
public sealed class Spectrum
{
    /// <summary>A pure sine.</summary>
    public static readonly Spectrum Sine = new(ImmutableSortedDictionary<int, double>.Empty);

    private readonly ImmutableSortedDictionary<int, double> shares;

    private Spectrum(ImmutableSortedDictionary<int, double> shares) => this.shares = shares;

    /// <summary>The orders that are there, from 2, rising; without the fundamental.</summary>
    public IEnumerable<int> Orders => shares.Keys;

    /// <summary>A third harmonic and nothing else.</summary>
    /// <param name="share">Of the fundamental, 0 or more.</param>
    public static Spectrum Third(double share) => Sine.With(3, share);

    /// <summary>The same with one more harmonic; the last said of an order holds.</summary>
    /// <param name="order">2 or more.</param>
    /// <param name="share">Of the fundamental, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The order or the share is outside its range.</exception>
    public Spectrum With(int order, double share)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(order, 2);
        ArgumentOutOfRangeException.ThrowIfNegative(share);
        return new(shares.SetItem(order, share));
    }

    /// <summary>Share of an order of the fundamental; 1 for the fundamental itself.</summary>
    public double Share(int order) => order == 1 ? 1 : shares.GetValueOrDefault(order);

    /// <summary>The fundamental in a current of so much: <c>I₁ = I / √(1 + h₃² + h₅² + …)</c>.</summary>
    /// <param name="rms">True root mean square, A.</param>
    public double FundamentalOf(double rms) => rms / Math.Sqrt(1 + shares.Values.Sum(share => share * share));
}

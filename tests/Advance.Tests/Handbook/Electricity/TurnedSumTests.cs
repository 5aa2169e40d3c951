using System.Numerics;
using Advance.Handbook;
using CsCheck;

namespace Advance.Tests.Handbook.Electricity;

/// <summary>The largest sum of phasors that may turn, against trying.</summary>
public sealed class TurnedSumTests
{
    private static readonly Gen<TurningPhasor> Turning =
        Gen.Select(Gen.Double[0, 10], Gen.Double[-Math.PI, Math.PI], Gen.Double[0, Math.PI]).Select((length, middle, within) => new TurningPhasor(length, middle, within));

    [Fact]
    public void No_choice_of_angles_is_longer_and_one_is_as_long() => Gen.Select(Gen.Double[-10, 10], Gen.Double[-10, 10], Turning.Array[0, 5]).Sample((x, y, turning) =>
    {
        var sum = TurnedSum.Of(new Complex(x, y), turning);

        // For each direction every phasor lies as near to it as it may: the best of all directions is the largest sum.
        var best = Enumerable.Range(0, 3600).Max(step => In(step * Math.PI / 1800, new Complex(x, y), turning).Magnitude);
        Assert.True(best <= sum.Length + 1e-9, $"{best} over {sum.Length}");
        Assert.Equal(best, sum.Length, 1e-3);
    });

    // Two directions, nearly each other's mirror image: one is longer by 5e-9.
    [Theory]
    [InlineData(4e-9)]
    [InlineData(-4e-9)]
    public void The_longer_of_two_that_are_nearly_alike_is_taken(double middle) =>
        Assert.Equal(Math.Max(Of(middle - 2.8), Of(middle + 2.8)), TurnedSum.Of(-4.0, [new(3, middle, 2.8)]).Length, 1e-12);

    [Fact]
    public void What_is_known_is_added_as_it_is() =>
        Gen.Select(Gen.Double[-10, 10], Gen.Double[-10, 10]).Sample((x, y) => Assert.Equal(new Complex(x, y).Magnitude, TurnedSum.Of(new Complex(x, y), []).Length, 1e-12));

    [Fact]
    public void What_may_turn_all_round_adds_its_length() =>
        Gen.Select(Gen.Double[-10, 10], Gen.Double[0, 10]).Sample((x, free) => Assert.Equal(Math.Abs(x) + free, TurnedSum.Of(x, [new(free, 2, Math.PI)]).Length, 1e-9));

    private static double Of(double angle) => (-4.0 + Complex.FromPolarCoordinates(3, angle)).Magnitude;

    private static Complex In(double direction, Complex known, TurningPhasor[] turning) => turning.Aggregate(known, (sum, one) =>
    {
        var off = Math.IEEERemainder(direction - one.Middle, 2 * Math.PI);
        return sum + Complex.FromPolarCoordinates(one.Length, one.Middle + Math.Clamp(off, -one.Within, one.Within));
    });
}

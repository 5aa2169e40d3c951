using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Reading.Phrases;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Small gigs on supplies with more than one leg: a box with so many outlets on each, and a thing on each outlet that is named for it.</summary>
internal static class LegGigs
{
    private const string Red = "63 A red";

    /// <summary>Up to ten things, each with a draw, an angle or none, a third and a fifth harmonic, and the phase its outlet is on.</summary>
    public static readonly Gen<IReadOnlyList<Drawn>> Wye = Any("L1", "L2", "L3", "L1-L2", "L2-L3", "L1-L3");

    /// <summary>The same on two legs.</summary>
    public static readonly Gen<IReadOnlyList<Drawn>> Split = Any("L1", "L2", "L1-L2");

    /// <summary>A thing.</summary>
    public sealed record Drawn(string Phase, double Amperes, double? Lag, double Third = 0, double Fifth = 0, double? PowerFactor = null);

    /// <summary>The gig.</summary>
    public static Brief Of(IReadOnlyList<Drawn> things, string supply = "230/400 V three-phase 50 Hz", string takes = "100-480 V")
    {
        List<Kind> kinds = [.. things.Select((one, index) => Kind($"Thing {index + 1}", one, takes, $"plug {index + 1}")), Box(things, supply), .. PlugLeads(things), PowerGigs.Lead(Red)];
        var brief = PowerGigs.Brief(
            [.. things.Select((_, index) => PowerGigs.Thing($"Thing {index + 1}", index))],
            kinds,
            [PowerGigs.Distribution("PD1", "box", "service 0", 0)],
            [PowerGigs.Service("0", 0, Given.Of(Supply(supply), Gigs.Here)) with { Connector = Given.Of(Red, Gigs.Here), Rating = PowerGigs.Amperes(63) }]);
        return brief;
    }

    /// <summary>As it is written.</summary>
    public static Supply Supply(string text) => Supplies.Supply.TryRead(text, out var supply, out _) ? supply : throw new ArgumentException(text, nameof(text));

    private static Gen<IReadOnlyList<Drawn>> Any(params string[] phases) =>
        Gen.Select(Gen.Int[0, phases.Length - 1], Tenths(1, 200), Tenths(-400, 600), Gen.Bool, Tenths(0, 700), Tenths(0, 400))
            .Select((phase, amperes, lag, isKnown, third, fifth) => new Drawn(phases[phase], amperes, isKnown ? lag : null, third, fifth))
            .Array[1, 10].Select(things => (IReadOnlyList<Drawn>)things);

    // As somebody would write them: a harmonic of 1e-81 % is no harmonic.
    private static Gen<double> Tenths(int least, int most) => Gen.Int[least, most].Select(tenths => tenths / 10.0);

    private static Kind Kind(string id, Drawn thing, string takes, string plug) => Gigs.Kind(id, 1) with
    {
        Mains = new Mains(
            Given.Of(Supply(takes), Gigs.Here), PowerGigs.Amperes(thing.Amperes), PowerGigs.Amperes(thing.Amperes), thing.PowerFactor is { } factor ? Given.Of(factor, Gigs.Here) : null, PowerGigs.Amperes(10), PowerGigs.Amperes(0.0005),
            plug, "", null, Given.Of(Ratio.FromPercent(thing.Third), Gigs.Here), thing.Lag is { } lag ? Given.Of(Angle.FromDegrees(lag), Gigs.Here) : null)
        {
            FifthHarmonic = Given.Of(Ratio.FromPercent(thing.Fifth), Gigs.Here),
        },
    };

    // A plug of its own for each, so that nothing is left to choose.
    private static Kind Box(IReadOnlyList<Drawn> things, string supply) => PowerGigs.Box(Red) with
    {
        Mains = PowerGigs.Box(Red).Mains! with { Supply = Given.Of(Supply(supply), Gigs.Here) },
        Outlets = [.. things.Select((one, index) => new OutletRow(new NumberRange(index + 1, index + 1), $"plug {index + 1}", one.Phase, "C32", PowerGigs.Amperes(32), PowerGigs.Amperes(0.03), Gigs.Here))],
    };

    private static IEnumerable<Kind> PlugLeads(IReadOnlyList<Drawn> things) => things.Select((_, index) => PowerGigs.Lead($"plug {index + 1}"));
}

using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Trusses to try: even ones, and any at all from fixed seeds.</summary>
internal static class Trusses
{
    private static readonly Gen<HungHoist[]> Hoists =
        from count in Gen.Int[2, 8]
        from gaps in Gen.Double[0.4, 6].Array[count]
        from stiffness in Gen.Double[1e5, 2e6].Array[count]
        from known in Gen.Bool.Array[count]
        select Enumerable.Range(0, count).Select(hoist => new HungHoist(gaps.Take(hoist + 1).Sum(), known[hoist] ? stiffness[hoist] : null)).ToArray();

    private static readonly Gen<HungBeam> Any =
        from hoists in Hoists
        from end in Gen.Double[0, 3]
        let length = hoists[^1].At + end
        from bending in Gen.Double[3e5, 2e7]
        from shear in Gen.Double[1e6, 5e7]
        from isSheared in Gen.Bool
        from own in Gen.Double[50, 400]
        from loads in (from at in Gen.Double[0, 1] from force in Gen.Double[0, 8000] from across in Gen.Double[-0.3, 0.3] select new HungLoad(at * length, force, across)).Array[0, 6]
        select new HungBeam(length, bending, isSheared ? shear : null, [new HungWeight(0, length, own)], loads, hoists);

    /// <summary>Equal spans, evenly loaded, hoists at both ends.</summary>
    /// <param name="hoists">2 or more.</param>
    /// <param name="span">m.</param>
    /// <param name="perMetre">N/m.</param>
    /// <param name="bending">N m².</param>
    /// <param name="stiffness">N/m; null for chains that do not give.</param>
    public static HungBeam Even(int hoists, double span = 1, double perMetre = 1, double bending = 1, double? stiffness = null)
    {
        var length = span * (hoists - 1);
        return new(length, bending, null, [new HungWeight(0, length, perMetre)], [], [.. Enumerable.Range(0, hoists).Select(hoist => new HungHoist(hoist * span, stiffness))]);
    }

    /// <summary>Any trusses whose centre of gravity lies between the outermost hoists, always the same ones.</summary>
    /// <param name="count">How many.</param>
    public static IEnumerable<HungBeam> Fixed(int count) => Values(Any, count).Where(truss => truss.IsInside);

    /// <summary>Values of a generator, always the same ones.</summary>
    public static IEnumerable<T> Values<T>(Gen<T> gen, int count)
    {
        for (var seed = 1; seed <= count; seed++)
        {
            yield return gen.Generate(new PCG((uint)seed, 20_26), null, out _);
        }
    }
}

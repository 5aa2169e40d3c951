using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Which share of each load comes to each pick, on the chains that pull in a case: together the shares of a load are 1.</summary>
internal sealed class LoadShares(HungBeam hung, LiftState state)
{
    /// <summary>Of one pick, for each load in their order.</summary>
    public IEnumerable<double> Of(int pick, IReadOnlyList<CarriedLoad> loads)
    {
        var holding = Enumerable.Range(0, hung.Hoists.Count).Where(hoist => state.Levels[hoist] > 0).ToList();
        var own = holding.IndexOf(pick);
        return loads.Select(load => own < 0 ? 0 : holding.Count == 1 ? 1 : Share(load, holding, own));
    }

    private double Share(CarriedLoad load, List<int> holding, int own)
    {
        var one = load.To is { } end ? BeamLoad.Uniform(load.From!.Value, end, 1 / (end - load.From.Value)) : BeamLoad.Point(load.From!.Value, 1);
        var alone = new Beam(hung.Length, hung.Beam.Bending, hung.Beam.Shear, [one]);
        return ContinuousBeam.Solve(alone, [.. holding.Select(hoist => SupportOf(hung.Hoists[hoist]))]).Reactions[own];
    }

    private BeamSupport SupportOf(HungHoist hoist) =>
        new(hoist.At) { Stiffness = state.Case.IsSoft ? hoist.Stiffness : null };
}

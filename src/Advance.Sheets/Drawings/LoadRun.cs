using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>Loads along a truss that one label stands for.</summary>
/// <param name="Places">What hangs in each place, along the truss.</param>
/// <param name="Tier">How low its arrows reach: 0 for the shortest.</param>
internal sealed record LoadRun(IReadOnlyList<IReadOnlyList<CarriedLoad>> Places, int Tier)
{
    /// <summary>Of its first place, in metres.</summary>
    public double From => Places[0][0].From!.Value;

    /// <summary>Of its last place.</summary>
    public double To => Places[^1][0].From!.Value;
}

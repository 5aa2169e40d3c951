using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What stands for kit that is not chosen yet, where it hangs on the supply. What hangs there already of that kit is taken off it.</summary>
/// <param name="Row">As written; of several for the same on the same place, the first.</param>
/// <param name="On">Name of the service or the distribution; empty where nobody knows, and then it is counted nowhere.</param>
/// <param name="InUse">What is left of it on each leg, in use.</param>
/// <param name="AtMost">What is left of it on each leg, at most.</param>
public sealed record PowerAllowance(Allowance Row, string On, Figure<ElectricCurrent> InUse, Figure<ElectricCurrent> AtMost)
{
    /// <summary>Its name in the plan.</summary>
    public Address Address => Address.Of("power") / "allowance" / Row.What / (On.Length > 0 ? On : "nowhere");

    /// <summary>Its numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures => On.Length == 0
        ? []
        :
        [
            Stated.Of(Address / "in-use", $"allowance for {Row.What} on {On}, what is left of it in use", InUse),
            Stated.Of(Address / "at-most", $"allowance for {Row.What} on {On}, what is left of it at most", AtMost),
        ];
}

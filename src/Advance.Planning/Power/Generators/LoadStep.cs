using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a generator takes on at once when one device is closed.</summary>
/// <param name="On">The step of switching on.</param>
/// <param name="Load">Apparent power of what hangs on the device, in use.</param>
/// <param name="Share">The same, of the set's rating.</param>
public sealed record LoadStep(SwitchOnStep On, Figure<ElectricApparentPower> Load, Figure<Ratio> Share);

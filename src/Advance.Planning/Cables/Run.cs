using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One cable path from a connector to a connector, made of one lead or several.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Label">As written on the leads.</param>
/// <param name="Link">What it makes.</param>
/// <param name="Needed">How long it must be; unknown where an end is nowhere.</param>
/// <param name="Leads">From the source on; empty where none was found, or how long it must be is unknown.</param>
/// <param name="MadeUp">The length of the leads together; unknown where there are none.</param>
public sealed record Run(
    Address Address, string Label, Link Link, Figure<Length> Needed, IReadOnlyList<Kind> Leads, Figure<Length> MadeUp);

using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>One line, or one mix, of a row that wants ports.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Issued">The port it had in the last issue; null where there was none.</param>
internal sealed record PortLine(Address Address, Port? Issued);

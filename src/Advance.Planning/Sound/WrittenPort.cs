using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Somewhere that the gig names a device and its ports, or a stack.</summary>
/// <param name="Where">Who names it.</param>
/// <param name="User">The same, in words.</param>
/// <param name="Ports">What is named.</param>
/// <param name="Takes">The signal that it takes; null where that does not matter.</param>
/// <param name="IsFed">Whether it is fed from there; false where it feeds what it names.</param>
/// <param name="At">Where it was written.</param>
public sealed record WrittenPort(Address Where, string User, PortRange Ports, string? Takes, bool IsFed, Mark At);

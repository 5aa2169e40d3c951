namespace Advance.Planning;

/// <summary>A unit that wants an address, and which one it would like.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="First">The first number of its range.</param>
/// <param name="Wanted">The number it takes where that is free: counted from the place of its kind in the list, so that units of other kinds move it never.</param>
internal sealed record AddressWish(NetworkUnit Unit, int First, int Wanted);

namespace Advance.Domain.Facts;

/// <summary>Whose a thing is: <c>shop</c>, <c>venue</c>, <c>act</c>, <c>client</c>, <c>hire Northern Light and Sound</c>.</summary>
/// <param name="Kind">Who.</param>
/// <param name="Name">The hire's supplier, or the act where the place in the file does not say which; null where not named and for all others.</param>
public sealed record Owner(OwnerKind Kind, string? Name = null);

using Advance.Domain.Facts;

namespace Advance.Sheets.Views;

/// <summary>Whose a thing is, as printed.</summary>
internal static class OwnerWords
{
    /// <summary><c>shop</c>, <c>hire Vale Radio Hire</c>, the act's name.</summary>
    public static string Of(Owner owner) => owner.Kind switch
    {
        OwnerKind.Shop => "shop",
        OwnerKind.Venue => "venue",
        OwnerKind.Client => "client",
        OwnerKind.Act => owner.Name ?? "act",
        _ => owner.Name is { } supplier ? $"hire {supplier}" : "hire",
    };
}

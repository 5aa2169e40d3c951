namespace Advance.Domain.Facts;

/// <summary>Who a thing comes from.</summary>
public enum OwnerKind
{
    /// <summary>The shop's own stock; only this is pulled.</summary>
    Shop,

    /// <summary>In the house already.</summary>
    Venue,

    /// <summary>An act brings it.</summary>
    Act,

    /// <summary>Whoever ordered the gig brings it.</summary>
    Client,

    /// <summary>Hired in for the gig.</summary>
    Hire,
}

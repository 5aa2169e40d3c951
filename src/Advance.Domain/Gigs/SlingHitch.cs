namespace Advance.Domain.Gigs;

/// <summary>How a sling is laid around what it holds.</summary>
public enum SlingHitch
{
    /// <summary><c>choked</c>: through itself.</summary>
    Choked,

    /// <summary><c>straight</c>: from end to end.</summary>
    Straight,

    /// <summary><c>basket</c>: around it, both ends to the hook, to 45 degrees from the vertical.</summary>
    Basket,

    /// <summary><c>upright basket</c>: around it, its two parts parallel.</summary>
    UprightBasket,

    /// <summary><c>wide basket</c>: around it, over 45 to 60 degrees from the vertical.</summary>
    WideBasket,
}

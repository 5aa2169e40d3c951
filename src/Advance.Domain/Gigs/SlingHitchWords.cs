namespace Advance.Domain.Gigs;

/// <summary>How a sling is laid, as it is written and printed.</summary>
public static class SlingHitchWords
{
    /// <summary><c>choked</c>, <c>straight</c>, <c>basket</c>, <c>upright basket</c> or <c>wide basket</c>.</summary>
    public static string Words(this SlingHitch hitch) => hitch switch
    {
        SlingHitch.Straight => "straight",
        SlingHitch.Basket => "basket",
        SlingHitch.UprightBasket => "upright basket",
        SlingHitch.WideBasket => "wide basket",
        _ => "choked",
    };
}

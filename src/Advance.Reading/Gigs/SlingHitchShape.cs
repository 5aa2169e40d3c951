using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>How a sling is laid.</summary>
internal static class SlingHitchShape
{
    public static readonly Shape<SlingHitch> It = Written.OneOf(
        "sling-hitch",
        "how a sling is laid",
        ("choked", SlingHitch.Choked),
        ("straight", SlingHitch.Straight),
        ("basket", SlingHitch.Basket),
        ("upright basket", SlingHitch.UprightBasket),
        ("wide basket", SlingHitch.WideBasket));
}

namespace Advance.Domain.Venues;

/// <summary>How a point is made, as it is written and printed.</summary>
public static class PointMadeWords
{
    /// <summary><c>clamp</c>, <c>eye</c> or <c>bare steel</c>.</summary>
    public static string Words(this PointMade made) => made switch
    {
        PointMade.Clamp => "clamp",
        PointMade.Eye => "eye",
        _ => "bare steel",
    };
}

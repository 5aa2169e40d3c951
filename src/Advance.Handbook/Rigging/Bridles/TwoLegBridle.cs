namespace Advance.Handbook;

/// <summary>
/// A load on two legs in one plane, anchors at one height or not: <c>T₁ = W L₁ H₂ / (V₁ H₂ + V₂ H₁)</c>. Source: <see cref="Statics.Bridles"/>.
/// </summary>
public sealed class TwoLegBridle
{
    private readonly (double Drop, double Away) first;
    private readonly (double Drop, double Away) second;

    private TwoLegBridle(double load, (double Drop, double Away) first, (double Drop, double Away) second)
    {
        (this.first, this.second, Load) = (first, second, load);
        var whole = (first.Drop * second.Away) + (second.Drop * first.Away);
        HorizontalPull = load * first.Away * second.Away / whole;
        First = LegOf(first, load * second.Away / whole);
        Second = LegOf(second, load * first.Away / whole);
    }

    /// <summary>What hangs at the apex, its hoist and chain among it, N.</summary>
    public double Load { get; }

    /// <summary>The left leg.</summary>
    public BridleLeg First { get; }

    /// <summary>The right leg.</summary>
    public BridleLeg Second { get; }

    /// <summary>What each anchor is pulled sideways, N; negative where the apex does not lie between the anchors.</summary>
    public double HorizontalPull { get; }

    /// <summary>Angle between the legs, degrees.</summary>
    public double IncludedAngle => (Math.Atan2(first.Away, first.Drop) + Math.Atan2(second.Away, second.Drop)) * 180 / Math.PI;

    /// <summary>Whether both legs pull; otherwise the load hangs on one of them and swings below its anchor.</summary>
    public bool IsTaut => first.Away >= 0 && second.Away >= 0;

    /// <summary>From how the apex lies.</summary>
    /// <param name="load">W, N, 0 or more.</param>
    /// <param name="firstDrop">V₁: how far the apex lies below the left anchor, m, more than 0.</param>
    /// <param name="firstAway">H₁: how far it lies right of the left anchor, m; negative where it lies left of it.</param>
    /// <param name="secondDrop">V₂: below the right anchor, m, more than 0.</param>
    /// <param name="secondAway">H₂: left of the right anchor, m; negative where it lies right of it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The load is negative, the apex lies no lower than an anchor, or the anchors lie in one line or the wrong way round.</exception>
    public static TwoLegBridle FromApex(double load, double firstDrop, double firstAway, double secondDrop, double secondAway)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(load);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(firstDrop);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(secondDrop);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(firstAway + secondAway);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero((firstDrop * secondAway) + (secondDrop * firstAway));
        return new(load, (firstDrop, firstAway), (secondDrop, secondAway));
    }

    /// <summary>
    /// From how long the legs are: the apex is the lower of the two places where circles about the anchors meet. Null where they do not meet below both
    /// anchors: the legs are too short, or one is so long that the other carries all.
    /// </summary>
    /// <param name="load">W, N, 0 or more.</param>
    /// <param name="span">How far apart the anchors are, level, m, more than 0.</param>
    /// <param name="higher">How much higher the right anchor is than the left, m; negative where it is lower.</param>
    /// <param name="firstLength">L₁, m, more than 0.</param>
    /// <param name="secondLength">L₂, m, more than 0.</param>
    public static TwoLegBridle? FromLengths(double load, double span, double higher, double firstLength, double secondLength)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(span);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(firstLength);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(secondLength);
        var apart = Math.Sqrt((span * span) + (higher * higher));
        var along = ((apart * apart) + (firstLength * firstLength) - (secondLength * secondLength)) / (2 * apart);
        var square = (firstLength * firstLength) - (along * along);
        if (square <= 0)
        {
            return null;
        }

        var across = Math.Sqrt(square);
        var away = ((along * span) + (across * higher)) / apart;
        var drop = ((across * span) - (along * higher)) / apart;
        return drop > 0 && drop + higher > 0 && (drop * (span - away)) + ((drop + higher) * away) > 0
            ? FromApex(load, drop, away, drop + higher, span - away)
            : null;
    }

    /// <summary>How far the apex lies below the left anchor and right of it, m.</summary>
    public (double Drop, double Away) Apex => first;

    private static BridleLeg LegOf((double Drop, double Away) leg, double perMetre)
    {
        var length = Math.Sqrt((leg.Drop * leg.Drop) + (leg.Away * leg.Away));
        return new(length, perMetre * length, perMetre * leg.Drop, perMetre * leg.Away);
    }
}

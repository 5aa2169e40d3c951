namespace Advance.Planning;

/// <summary>What a hoist brings along, N each: what its own chain carries, and what its point carries, with a truss on it.</summary>
/// <param name="Body">The hoist itself.</param>
/// <param name="Chain">All of its chain, hanging or in the bag.</param>
/// <param name="Bag">The bag without chain.</param>
/// <param name="Lower">Slings, shackles, adapters between hoist or hook and the truss.</param>
/// <param name="Upper">Steel, bridle, shackles between hoist or hook and the point.</param>
public sealed record HoistTackle(double Body, double Chain, double Bag, double Lower, double Upper)
{
    /// <summary>
    /// What a hoist lifts: <c>Q = DF (R + all below its hook)</c>. With the body up at the point that is the lower tackle and, to be safe, all of the
    /// chain; a body that climbs with the truss lifts itself and its bag too.
    /// </summary>
    /// <param name="level">R: what the truss asks of it, N.</param>
    /// <param name="factor">DF, 1 at rest, more while it moves.</param>
    /// <param name="bodyAtTruss">Whether the body is at the truss, its hook up.</param>
    public double Lifted(double level, double factor, bool bodyAtTruss) => factor * (level + Lower + Chain + (bodyAtTruss ? Body + Bag : 0));

    /// <summary>What one fall of its chain pulls: the load lifted over the falls; the point carries no less for it.</summary>
    /// <param name="lifted">Q, N.</param>
    /// <param name="falls">1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no falls.</exception>
    public static double InChain(double lifted, int falls)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(falls, 1);
        return lifted / falls;
    }

    /// <summary>What its point carries: <c>DF (R + hoist + all chain + bag + all tackle)</c>.</summary>
    /// <param name="level">R: what the truss asks of the hoist, N.</param>
    /// <param name="factor">DF, 1 at rest, more while it moves.</param>
    public double OnPoint(double level, double factor) => factor * (level + Body + Chain + Bag + Lower + Upper);

    /// <summary>
    /// The most that a hoist pulls when its load catches on something, until its clutch slips: <c>F = φ Q_R + Q_H − Q_R</c>, as EN 14492-2 has it. The
    /// point carries the hoist's own weight besides.
    /// </summary>
    /// <param name="rating">Q_R: what it is rated for, N.</param>
    /// <param name="clutch">φ by the maker, 1 or more; 1.35 to 1.6 are usual.</param>
    /// <param name="gross">Q_H: rated load, hook, hanging chain and tackle together, N.</param>
    /// <exception cref="ArgumentOutOfRangeException">The clutch would slip below the rating.</exception>
    public static double Snag(double rating, double clutch, double gross)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(clutch, 1);
        return (clutch * rating) + gross - rating;
    }
}

namespace Advance.Planning;

/// <summary>From the least to the most of some values.</summary>
internal readonly record struct CurveRange(double Least, double Most)
{
    /// <summary>Of no value yet.</summary>
    public static CurveRange Nothing => new(double.MaxValue, double.MinValue);

    /// <summary>And one value more.</summary>
    public CurveRange With(double value) => new(Math.Min(Least, value), Math.Max(Most, value));
}

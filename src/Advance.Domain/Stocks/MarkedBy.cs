namespace Advance.Domain.Stocks;

/// <summary>By the rules of which region a part that bears is rated, marked and coloured.</summary>
public enum MarkedBy
{
    /// <summary><c>EN</c>: angles from the vertical.</summary>
    En,

    /// <summary><c>ASME</c>: angles from the horizontal.</summary>
    Asme,
}

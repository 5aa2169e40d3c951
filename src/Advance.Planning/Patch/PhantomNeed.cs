using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Which lines get 48 V: those whose source does not work without.</summary>
internal static class PhantomNeed
{
    /// <summary>Whether 48 V is wanted on the lines of a row; unknown where it is not known what is plugged in, or no stock says what that needs.</summary>
    /// <param name="row">As written.</param>
    /// <param name="kind">What is plugged in; null where no stock has it.</param>
    public static Figure<bool> Of(InputRow row, Kind? kind)
    {
        var doubts = Doubts.Of(row.Device?.Doubt).With(Doubts.Of(row.Device is null ? null : row.From?.Doubt));
        return new Figure<bool>(row.Device is null ? false : Wants(kind), doubts, Reason.Derived.It);
    }

    // Only microphones and DIs can need it.
    private static bool? Wants(Kind? kind) => kind switch
    {
        null => null,
        { Phantom: { } phantom } => phantom == Phantom.Needed,
        { Role: Role.Microphone or Role.DirectBox } => null,
        _ => false,
    };
}

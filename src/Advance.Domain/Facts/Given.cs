using System.Diagnostics.CodeAnalysis;

namespace Advance.Domain.Facts;

/// <summary>
/// What somebody wrote: a value, a value with a doubt (<c>63 A TBC venue</c>), or only a doubt (<c>TBC</c>, or left out).
/// An unknown is never zero: whoever needs the value must ask whether it is there. The default is an unknown that nobody asked about.
/// </summary>
/// <typeparam name="T">A quantity, a number, a text, a list.</typeparam>
public readonly record struct Given<T>
    where T : notnull
{
    private readonly T value;

    private Given(bool isKnown, T value, Mark at, Doubt? doubt, Known how)
    {
        IsKnown = isKnown;
        this.value = value;
        At = at;
        Doubt = doubt;
        How = how;
    }

    /// <summary>Whether there is a value, doubtful or not.</summary>
    public bool IsKnown { get; }

    /// <summary>Where it was written; for what was left out, the thing that lacks it.</summary>
    public Mark At { get; }

    /// <summary>The open question about it, if there is one; always there where the value is unknown and a reader made it.</summary>
    public Doubt? Doubt { get; }

    /// <summary>How the value is known.</summary>
    public Known How { get; }

    /// <summary>The value; ask <see cref="IsKnown"/> first.</summary>
    /// <exception cref="InvalidOperationException">The value is unknown.</exception>
    public T Value => IsKnown ? value : throw new InvalidOperationException($"The value at {At} is unknown.");

    /// <summary>Gives the value if it is known.</summary>
    public bool Is([MaybeNullWhen(false)] out T known)
    {
        known = value;
        return IsKnown;
    }

    /// <summary>The value, or <paramref name="otherwise"/> where it is unknown. Not for sums that life or a fuse hangs on.</summary>
    public T Or(T otherwise) => IsKnown ? value : otherwise;

    /// <summary>The same place, doubt and knowledge about a value made from this one.</summary>
    public Given<TTo> Select<TTo>(Func<T, TTo> turn)
        where TTo : notnull => new(IsKnown, IsKnown ? turn(value) : default!, At, Doubt, How);

    internal static Given<T> Make(bool isKnown, T value, Mark at, Doubt? doubt, Known how) => new(isKnown, value, at, doubt, how);
}

/// <summary>Makes given values.</summary>
public static class Given
{
    /// <summary>A value that was written, with its doubt if it ends in TBC.</summary>
    public static Given<T> Of<T>(T value, Mark at, Doubt? doubt = null, Known how = Known.Stated)
        where T : notnull => Given<T>.Make(true, value, at, doubt, how);

    /// <summary>No value: TBC alone, or left out.</summary>
    public static Given<T> Unknown<T>(Mark at, Doubt doubt)
        where T : notnull => Given<T>.Make(false, default!, at, doubt, Known.Stated);
}

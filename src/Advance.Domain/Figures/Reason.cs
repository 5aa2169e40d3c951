using Advance.Domain.Facts;

namespace Advance.Domain.Figures;

/// <summary>Why a value is what it is: somebody fixed it, a policy says so, or it was worked out.</summary>
public abstract record Reason
{
    private Reason()
    {
    }

    /// <summary>Written by hand: obeyed, and checked.</summary>
    /// <param name="At">Where.</param>
    /// <param name="How">How it is known.</param>
    public sealed record Fixed(Mark At, Known How = Known.Stated) : Reason;

    /// <summary>A setting of the company, or the default that stands where the company says nothing.</summary>
    /// <param name="Name">The policy's key, as in the company file.</param>
    public sealed record Policy(string Name) : Reason;

    /// <summary>Worked out.</summary>
    public sealed record Derived : Reason
    {
        /// <summary>The only one.</summary>
        public static readonly Derived It = new();
    }
}

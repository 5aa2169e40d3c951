namespace Advance.Domain.Stocks;

/// <summary>What a part that bears is.</summary>
public enum LiftingKind
{
    /// <summary><c>roundsling</c>: textile, soft.</summary>
    Roundsling,

    /// <summary><c>steel</c>: a wire rope with eyes.</summary>
    Steel,

    /// <summary><c>chain</c>: a chain sling.</summary>
    Chain,

    /// <summary><c>shackle</c>.</summary>
    Shackle,

    /// <summary><c>clamp</c>: on a beam or a tube.</summary>
    Clamp,

    /// <summary><c>bond</c>: what holds when something else lets go.</summary>
    Bond,

    /// <summary><c>eye</c>: a bolt or nut with an eye and a shoulder.</summary>
    Eye,

    /// <summary><c>spreader</c>: a bar that keeps legs apart.</summary>
    Spreader,
}

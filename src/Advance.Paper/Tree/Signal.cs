namespace Advance.Paper.Tree;

/// <summary>Signal words in the sense of ANSI Z535.</summary>
public enum Signal
{
    /// <summary>People will be killed or badly hurt.</summary>
    Danger,

    /// <summary>People can be killed or badly hurt.</summary>
    Warning,

    /// <summary>People can be hurt.</summary>
    Caution,
}

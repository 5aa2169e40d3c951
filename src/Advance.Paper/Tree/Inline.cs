namespace Advance.Paper.Tree;

/// <summary>A piece of a line.</summary>
public abstract record Inline
{
    private protected Inline()
    {
    }
}

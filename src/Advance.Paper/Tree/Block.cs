namespace Advance.Paper.Tree;

/// <summary>A piece of a sheet that takes the whole width of where it stands.</summary>
public abstract record Block
{
    private protected Block()
    {
    }

    /// <summary>A name that links lead to, unique in the document; null when nothing leads here.</summary>
    public string? Id { get; init; }
}

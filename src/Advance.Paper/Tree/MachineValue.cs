namespace Advance.Paper.Tree;

/// <summary>What a workbook holds, and what HTML carries beside the text.</summary>
public abstract record MachineValue
{
    private protected MachineValue()
    {
    }
}

using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>UL 943, ground-fault circuit interrupters.</summary>
public static class Ul943
{
    /// <summary>Class A: holds below 4 mA, opens from 6 mA, with its longest time.</summary>
    public static readonly Publication ClassA = new("UL 943", "", "class A", Standing.Read);
}

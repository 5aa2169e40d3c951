namespace Advance.Handbook;

/// <summary>The slots that a fixture listens to.</summary>
/// <param name="First">Its address, from 1.</param>
/// <param name="Count">How many slots, at least 1.</param>
public readonly record struct SlotRange(int First, int Count)
{
    /// <summary>The last slot: <c>e = a + n - 1</c>.</summary>
    public int Last => First + Count - 1;

    /// <summary>Whether it lies inside one universe, slots 1 to 512.</summary>
    public bool IsInUniverse => First >= 1 && Count >= 1 && Last <= LightingControl.SlotsInUniverse;

    /// <summary>Whether both listen to a slot.</summary>
    public bool Overlaps(SlotRange other) => First <= other.Last && other.First <= Last;
}

namespace Advance.Paper.Setting;

/// <summary>How dark ink is. One black; the greys only ever repeat what size says.</summary>
internal enum Shade
{
    /// <summary>The one black.</summary>
    Ink,

    /// <summary>Quiet text.</summary>
    Soft,

    /// <summary>Hairlines.</summary>
    Hair,

    /// <summary>Areas behind text, as the rail of a bar.</summary>
    Pale,

    /// <summary>The paper.</summary>
    White,
}

namespace Advance.Sheets.Drawings;

/// <summary>How a box of the one-line is drawn.</summary>
internal enum OneLineLook
{
    /// <summary>Where power comes from: a heavy outline.</summary>
    Service,

    /// <summary>A distribution or a strip: an outline.</summary>
    Distribution,

    /// <summary>A device that opens: a switch in the line.</summary>
    Device,

    /// <summary>An outlet without a device: a dot.</summary>
    Outlet,

    /// <summary>What draws: words at the end of the line.</summary>
    Load,
}

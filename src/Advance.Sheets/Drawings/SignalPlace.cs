namespace Advance.Sheets.Drawings;

/// <summary>A node in its layer, or the place where an edge passes through one.</summary>
/// <param name="id">Of the node; of the edge and the layer where one passes.</param>
/// <param name="node">Null where an edge only passes.</param>
/// <param name="layer">From 0 at the left.</param>
internal sealed class SignalPlace(string id, SignalNode? node, int layer)
{
    /// <summary>Unique.</summary>
    public string Id { get; } = id;

    /// <summary>Null where an edge only passes.</summary>
    public SignalNode? Node { get; } = node;

    /// <summary>From 0 at the left.</summary>
    public int Layer { get; } = layer;

    /// <summary>What comes in, from the top.</summary>
    public List<SignalStep> In { get; } = [];

    /// <summary>What goes out, from the top.</summary>
    public List<SignalStep> Out { get; } = [];

    /// <summary>Its upper edge, in mm.</summary>
    public double Top { get; set; }

    /// <summary>In mm: room for its text and for what is written where edges come in.</summary>
    public double Height => Node is null
        ? SignalText.Leading
        : Math.Max(SignalText.Title + (Node.Lines.Count * SignalText.Leading) + 1.5, Math.Max(In.Sum(step => step.Room), Out.Count * SignalText.Leading));

    /// <summary>In mm.</summary>
    public double Width => Node is null ? 0 : Math.Max(SignalText.TitleWidth(Node.Title), Node.Lines.Select(SignalText.Width).DefaultIfEmpty().Max()) + 4;

    /// <summary>Middle of its height.</summary>
    public double Middle => Top + (Height / 2);
}

namespace Advance.Sheets.Drawings;

/// <summary>The part of an edge between two neighbouring layers.</summary>
/// <param name="from">Where it begins.</param>
/// <param name="to">Where it ends.</param>
/// <param name="label">Said where it ends; empty where the edge goes on.</param>
internal sealed class SignalStep(SignalPlace from, SignalPlace to, IReadOnlyList<string> label)
{
    /// <summary>Where it begins.</summary>
    public SignalPlace From { get; } = from;

    /// <summary>Where it ends.</summary>
    public SignalPlace To { get; } = to;

    /// <summary>Said where it ends.</summary>
    public IReadOnlyList<string> Label { get; } = label;

    /// <summary>Height that its end takes with its label, in mm.</summary>
    public double Room => (Label.Count * SignalText.Leading) + 2;

    /// <summary>Where it leaves, in mm from the top of the diagram.</summary>
    public double StartY { get; set; }

    /// <summary>Where it arrives: under its label.</summary>
    public double EndY { get; set; }

    /// <summary>Which of the upright lanes between the layers it uses, from 0; -1 for none, where it runs straight.</summary>
    public int Lane { get; set; } = -1;
}

namespace Advance.Sheets.Views;

/// <summary>Each truss from its side.</summary>
/// <param name="Trusses">Those whose length is known.</param>
/// <param name="RestsOn">The open questions that may move what hangs; blank where there is none.</param>
public sealed record TrussPicturesView(IReadOnlyList<TrussPicturesView.Picture> Trusses, Cell RestsOn)
{
    /// <summary>One picture.</summary>
    /// <param name="Name">Of the truss.</param>
    /// <param name="From">From where it is seen.</param>
    /// <param name="HasForces">Whether shear and moment could be worked out.</param>
    /// <param name="Unplaced">Of its loads, those of unknown place; empty for none.</param>
    public sealed record Picture(string Name, string From, bool HasForces, string Unplaced);
}

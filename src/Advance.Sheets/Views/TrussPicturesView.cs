namespace Advance.Sheets.Views;

/// <summary>Each truss from its side.</summary>
/// <param name="Trusses">Those whose length is known.</param>
/// <param name="RestsOn">The open questions that may move what hangs; blank where there is none.</param>
public sealed record TrussPicturesView(IReadOnlyList<TrussPicturesView.Picture> Trusses, Cell RestsOn)
{
    /// <summary>One picture.</summary>
    /// <param name="Id">Of its sheet.</param>
    /// <param name="Name">Of the truss.</param>
    /// <param name="From">From where it is seen.</param>
    /// <param name="Own">What it weighs itself.</param>
    public sealed record Picture(string Id, string Name, string From, Cell Own)
    {
        /// <summary>Whether heights are drawn lower than they are.</summary>
        public required bool IsCut { get; init; }

        /// <summary>Whether shear and moment could be worked out.</summary>
        public required bool HasForces { get; init; }

        /// <summary>What wind, lines and leaning chains add sideways and from end to end, in words; blank where nothing does.</summary>
        public required Cell Sideways { get; init; }

        /// <summary>Of its loads, those of unknown place; empty for none.</summary>
        public required string Unplaced { get; init; }
    }
}

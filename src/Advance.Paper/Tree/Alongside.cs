using Advance.Paper.Pictures;

namespace Advance.Paper.Tree;

/// <summary>A picture at the left and a table at the right whose rows stand level with what they tell about. Rows that
/// begin under the picture may stand on the next page.</summary>
/// <param name="Scene">What is drawn.</param>
/// <param name="Bands">For each body row of the table the part of the scene that it stands level with, from top to bottom.</param>
/// <param name="Table">The rows.</param>
public sealed record Alongside(Scene Scene, IReadOnlyList<Band> Bands, Table Table) : Block
{
    /// <summary>The picture's share of the width, over 0 and under 1. Default 0.38.</summary>
    public double PictureShare { get; init; } = 0.38;
}

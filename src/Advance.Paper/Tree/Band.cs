namespace Advance.Paper.Tree;

/// <summary>A horizontal band of a scene, in the scene's own millimetres.</summary>
/// <param name="Top">Upper edge; y grows downwards.</param>
/// <param name="Bottom">Lower edge, not less than the upper one.</param>
public readonly record struct Band(double Top, double Bottom);

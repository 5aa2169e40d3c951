namespace Advance.Sheets.Views;

/// <summary>The sheets of generators.</summary>
/// <param name="Sets">One for each that the show hangs on.</param>
public sealed record GeneratorsView(IReadOnlyList<GeneratorView> Sets);

using Advance.Paper.Pictures;

namespace Advance.Sheets.Markup;

/// <summary>A drawing that templates can ask for by name.</summary>
/// <param name="Name">As a figure's <c>data-drawing</c> writes it.</param>
/// <param name="Takes">What it can be told, without <c>data-</c>: <c>act</c>.</param>
/// <param name="Draw">Makes the scene of what it is told; null where that is not in the plan, which is a fault at the figure.</param>
public sealed record Drawing(string Name, IReadOnlyList<string> Takes, Func<IReadOnlyDictionary<string, string>, Scene?> Draw);

namespace Advance.Paper.Tree;

/// <summary>Paper, its way up, and the size of type.</summary>
/// <param name="Size">Default A4.</param>
/// <param name="Orientation">Default portrait. A table too wide for a portrait page may turn the sheet.</param>
/// <param name="Class">Default desk.</param>
public sealed record SheetSetup(
    PageSize Size = PageSize.A4,
    Orientation Orientation = Orientation.Portrait,
    TypeClass Class = TypeClass.Desk);

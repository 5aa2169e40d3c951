using Advance.Paper.Tree;

namespace Advance.Sheets.Markup.Subset;

/// <summary>The element that a sheet is.</summary>
internal static class SheetForms
{
    public static IReadOnlyList<Form> All { get; } =
    [
        new("section", "sheet", Content.Sheet, Content.Block)
        {
            Means = "a sheet: a run of pages with the same head and foot; a template writes one or more, and nothing outside them",
            Gives = typeof(Sheet),
            Example = """
                <section class="sheet" id="day-sheet" title="Day sheet" data-for="everybody" data-readers="all">
                  <p>Doors at 19:00.</p>
                </section>
                """,
            Attributes =
            [
                new("id", Values.Id, "unique in the package; links lead to it") { IsRequired = true },
                new("title", Values.SomeText, "the sheet's name, large at the left, and in bookmarks and tabs") { IsRequired = true },
                new("data-for", Values.SomeText, "for whom it is, under the title") { IsRequired = true },
                new("data-readers", Values.Words, "whose copies hold the sheet") { IsRequired = true },
                new("data-workbook", Values.Name, "the workbook that holds its tables; default none"),
                new("data-type", Values.OneOf(typeof(TypeClass)), "how far away it is read; default `desk`"),
                new("data-paper", Values.OneOf(typeof(PageSize)), "default the gig's paper"),
                new("data-orientation", Values.OneOf(typeof(Orientation)), "default `portrait`"),
            ],
        },
    ];
}

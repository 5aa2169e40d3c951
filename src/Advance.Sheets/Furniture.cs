using Advance.Domain.Wording;
using Advance.Paper.Tree;
using Advance.Planning;
using Advance.Sheets.Markup;
using Advance.Sheets.Views;

namespace Advance.Sheets;

/// <summary>What stands on every sheet alike: the head, the foot, and what the files say about themselves.</summary>
internal sealed class Furniture
{
    private const string Draft = "DRAFT";

    private readonly Plan plan;
    private readonly PageSize paper;
    private readonly IReadOnlyList<IReadOnlyList<Inline>> lines;
    private readonly SheetFoot foot;

    public Furniture(Plan plan)
    {
        this.plan = plan;
        paper = plan.Brief.Company.Paper == Domain.Companies.PaperSize.Letter ? PageSize.Letter : PageSize.A4;
        lines = [.. Lines().Where(line => line.Length > 0).Select(line => (IReadOnlyList<Inline>)[new Text(line)])];
        foot = new SheetFoot([new Text(Joined(plan.Brief.Company.Name, "worked out from the gig; local code and licensed people decide"))], Standing());
        Info = new DocumentInfo($"{plan.Brief.Gig.Title}: advance package")
        {
            Author = plan.Brief.Company.Name,
            Subject = Joined(plan.ShowDate is { } date ? Speech.Date(date) : "", plan.Brief.Venue.Name),
            Issued = plan.Brief.Gig.Issued is { IsKnown: true } issued && plan.ShowDate is { } near ? issued.Value.Resolve(near) : null,
        };
    }

    /// <summary>For the files.</summary>
    public DocumentInfo Info { get; }

    /// <summary>A sheet with its head and foot.</summary>
    public Sheet Dress(MarkedUpSheet sheet)
    {
        var head = new SheetHead(sheet.Title)
        {
            For = [new Text($"for {sheet.For}")],
            Lines = lines,
            Revision = plan.Brief.Gig.Revision ?? Draft,
            Issued = Info.Issued is { } date ? Speech.Date(date) : "",
        };
        return new Sheet(sheet.Id, sheet.Title, sheet.Setup(paper), head, foot, sheet.Blocks) { Readers = [.. sheet.Readers] };
    }

    private IEnumerable<string> Lines()
    {
        var (gig, venue, _, _) = plan.Brief;
        var stages = gig.Stages.Count == 1 && gig.Stages[0].Name != "stage" ? gig.Stages[0].Name : "";
        yield return gig.Title;
        yield return Joined(plan.ShowDate is { } date ? Speech.Date(date) : "date TBC", venue.Name, stages);
        var manager = gig.People.FirstOrDefault(DaySheetViews.IsManager);
        yield return manager is null ? "" : Joined($"{manager.Name}, production manager", OnOneLine(manager.Phone?.Or("") ?? ""));
    }

    private List<Inline> Standing()
    {
        var open = plan.Brief.OpenQuestions.Count;
        var stops = plan.Findings.Count(finding => finding.Stops);
        var said = new List<Inline>();
        if (open > 0)
        {
            said.Add(new Text($"{open} TBC", TextStyle.Strong));
            said.Add(new Text(" in this package"));
        }

        if (stops > 0)
        {
            said.Add(new Text(open > 0 ? " · " : ""));
            said.Add(new Text($"{stops} {(stops == 1 ? "stop" : "stops")}", TextStyle.Strong));
            said.Add(new Text(": not for issue"));
        }

        return said;
    }

    // A number that is dialled is not broken.
    private static string OnOneLine(string phone) => phone.Replace(' ', '\u00A0');

    private static string Joined(params string[] parts) => string.Join(" · ", parts.Where(part => part.Length > 0));
}

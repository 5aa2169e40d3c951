using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Reading.Companies;
using Advance.Reading.Files;
using Advance.Reading.Gigs;
using Advance.Reading.Issues;
using Advance.Reading.Shapes;
using Advance.Reading.Stocks;
using Advance.Reading.Venues;
using Advance.Reading.Yaml;

namespace Advance.Reading;

/// <summary>Reads a gig with its venue, its company and its stock.</summary>
public static class BriefReader
{
    /// <summary>Reads all files, so that one run finds everything that is wrong in any of them. Nothing that a user writes is thrown.</summary>
    /// <param name="files">The folder that holds the gig's tree.</param>
    /// <param name="gigPath">The gig, relative to that folder, with forward slashes.</param>
    public static BriefReading Read(IFileDoor files, string gigPath)
    {
        var reader = new Reader(files);
        var yaml = new YamlFiles(reader);
        var root = yaml.Open(gigPath, FileFindings.Top(gigPath), gigPath);
        var gig = Shape(root, GigShape.It, reader);
        var venue = Named(root, GigShape.Venue, Venue.Unknown, VenueShape.It, yaml, reader);
        var company = Named(root, GigShape.Company, Company.Default, CompanyShape.It, yaml, reader);
        var questions = reader.Doubts.Where(doubt => !doubt.LeftOut).Distinct().ToList();
        var stock = StockOf(root, yaml, reader);

        var earlier = IssueFile.Read(files, gigPath, reader.Findings);
        var own = company?.Folder is { } folder ? CompanyFiles.Read(files, folder, reader.Findings) : CompanyFiles.None;
        var findings = InOrder(reader.Findings);
        var isWhole = gig is not null && venue is not null && company is not null && stock is not null
            && findings.All(finding => finding.Severity < Severity.Error);
        return new(isWhole ? new Brief(gig!, venue!, company!, stock!) { OpenQuestions = questions } : null, findings, reader.Sources, earlier) { CompanyFiles = own };
    }

    private static T? Named<T>(Node? gig, string key, T otherwise, Shape<T> shape, YamlFiles yaml, Reader reader)
        where T : class => Reference(gig, key) is not { } name ? otherwise : Shape(yaml.OpenNamed(name), shape, reader);

    private static Stock? StockOf(Node? gig, YamlFiles yaml, Reader reader) =>
        Reference(gig, GigShape.Stock) is not { } name ? Stock.None : new StockFolder(yaml, reader).Read(name);

    // A reference is looked for in the tree, and not in what is made of it: a gig with a fault elsewhere still leads to its other files.
    private static ScalarNode? Reference(Node? gig, string key) =>
        gig is MapNode map && map.Entries.FirstOrDefault(entry => entry.Key.Text == key).Value is ScalarNode { IsBlank: false } name and not BlockNode
        && !Settling.IsTbcAlone(name) ? name : null;

    private static T? Shape<T>(Node? node, Shape<T> shape, Reader reader)
        where T : class => node is not null && shape.TryRead(node, reader, out var value) ? value : null;

    private static IReadOnlyList<Finding> InOrder(IEnumerable<Finding> findings) =>
        [.. findings.DistinctBy(finding => (finding.Rule, finding.At, finding.Says.ToString())).OrderBy(finding => finding.At).ThenBy(finding => finding.Rule, StringComparer.Ordinal)];
}

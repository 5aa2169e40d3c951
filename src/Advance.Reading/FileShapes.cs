using Advance.Reading.Companies;
using Advance.Reading.Gigs;
using Advance.Reading.Shapes;
using Advance.Reading.Stocks;
using Advance.Reading.Venues;

namespace Advance.Reading;

/// <summary>The kinds of file.</summary>
internal static class FileShapes
{
    /// <summary>The names of the kinds.</summary>
    public static IReadOnlyList<string> Names { get; } = ["gig", "venue", "company", "stock"];

    /// <summary>The shape of a kind of file.</summary>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static Shape Of(string file) => file switch
    {
        "gig" => GigShape.It,
        "venue" => VenueShape.It,
        "company" => CompanyShape.It,
        "stock" => StockShape.It,
        _ => throw new ArgumentException($"There is no kind of file called {file}.", nameof(file)),
    };
}

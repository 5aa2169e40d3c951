using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the pictures of trusses.</summary>
internal static class TrussPicturesViews
{
    /// <summary>Null where no truss has a known length.</summary>
    public static TrussPicturesView? Of(Plan plan)
    {
        var trusses = plan.Rigging.Trusses.Where(truss => truss.Placed.Truss.Length.IsKnown).ToList();
        return trusses.Count == 0 ? null : new TrussPicturesView(
            [.. trusses.Select(PictureOf)],
            Cells.Head(trusses.Aggregate(Doubts.None, (sum, truss) => sum.With(truss.RestsOn).With(truss.Placed.Trim.RestsOn).With(Doubts.Of(truss.Placed.Truss.Length.Doubt)))));
    }

    private static TrussPicturesView.Picture PictureOf(TrussPlan truss) => new(
        truss.Name,
        truss.Placed.Truss.RunsUpstage ? "from stage left, downstage at the left" : "from the audience, stage right at the left",
        truss.Study is not null,
        string.Join(", ", truss.Loads.Where(load => load.From is null).Select(load => load.What)));
}

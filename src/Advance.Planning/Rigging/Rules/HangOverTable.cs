using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>rigging/hang-over-table</c></summary>
internal sealed class HangOverTable : Rule<HangOverTable.Case>
{
    public override string Name => "rigging/hang-over-table";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A frame has more boxes under it, or is tilted further, than the table of its maker has it.";

    public override string Why => "Frame and links are tested for that table and for nothing beyond it.";

    public override string Cures => "Fewer boxes, less tilt, or the frame that is made for it.";

    public override Publication Source => Handbook.RiggingStandards.Enclosures;

    // Where it cannot be worked out how it hangs, another rule asks.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.State is not null && hang.Stack.Frame?.Piece.Kind?.FlyingFrame is not null
        from kind in hang.Boxes.Select(box => box.Box.Piece.Item).Distinct(StringComparer.Ordinal)
        select new Case(hang, kind, RowOf(hang, kind));

    protected override Said Say(Case found)
    {
        var (name, frame, boxes) = (found.Hang.Stack.Stack.Name, found.Hang.Stack.Frame!.Piece.Item, found.Hang.Boxes.Count);
        if (!HasTable(found.Hang, found.Kind))
        {
            return new($"{name}: the stock has no table of its maker for {boxes} x {found.Kind} under {frame}.", "Write it to the frame, boxes by tilt.", $"{boxes} boxes, no table");
        }

        return found.Row is { } row
            ? new($"{name}: {frame} with {boxes} boxes may be tilted from {TiltWords.Of(row.From)} to {TiltWords.Of(row.To)}, and is {TiltWords.Of(found.Hang.Tilt.Value)}.", "Another hole, another tilt, or fewer boxes.", $"{boxes} boxes, {TiltWords.Of(found.Hang.Tilt.Value)}")
            : new($"{name}: {boxes} boxes under {frame}, and its maker's table ends at {Rows(found.Hang, found.Kind).Max(one => one.Boxes)}.", "Fewer boxes.", $"{boxes} boxes");
    }

    private static IEnumerable<FrameLimit> Rows(HangPlan hang, string kind) =>
        hang.Stack.Frame!.Piece.Kind!.FlyingFrame!.Limits.Where(row => row.Box.Length == 0 || string.Equals(row.Box, kind, StringComparison.OrdinalIgnoreCase));

    private static bool HasTable(HangPlan hang, string kind) => Rows(hang, kind).Any();

    // The row of the fewest boxes that covers as many as hang there; among those, one that its tilt is in.
    private static FrameLimit? RowOf(HangPlan hang, string kind) =>
        Covering(hang, kind).FirstOrDefault() ?? Rows(hang, kind).Where(row => row.Boxes >= hang.Boxes.Count).MinBy(row => row.Boxes);

    /// <summary>The rows of its maker's table that a hang is within, for one kind of its boxes.</summary>
    internal static IEnumerable<FrameLimit> Covering(HangPlan hang, string kind) => Rows(hang, kind).Where(row => row.Boxes >= hang.Boxes.Count && Covers(row, hang));

    private static bool Covers(FrameLimit row, HangPlan hang) =>
        hang.Tilt.Value is { } tilt && tilt.Degrees >= row.From.Degrees - 1e-9 && tilt.Degrees <= row.To.Degrees + 1e-9;

    private static Verdict Judge(HangPlan hang, string kind, FrameLimit? row) => !HasTable(hang, kind) ? Verdict.CannotBeJudged
        : row is not null && Covers(row, hang) ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(HangPlan Hang, string Kind, FrameLimit? Row)
        : Judgement(Hang.Written / "table" / Kind, Hang.Placed.Hang.At, Judge(Hang, Kind, Row), Hang.Tilt.RestsOn);
}

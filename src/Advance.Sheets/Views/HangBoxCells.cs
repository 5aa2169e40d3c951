using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>The boxes of a hang, as rows of its sheet.</summary>
internal sealed class HangBoxCells(Plan plan, Cells cells, RiggingCells rigging, Speech speech, HangPlan hang)
{
    private readonly LeadCells leads = new(plan, speech, hang.Stack.Boxes.ToDictionary(box => box.Piece.Name, box => $"box {box.Position}"));

    /// <summary>One box.</summary>
    public HangView.Box Of(HangBoxPlan box)
    {
        var (piece, driven) = (box.Box.Piece, plan.Drive.Of(box.Box.Piece.Address));
        var (top, bottom) = Drawings.HangDrawing.BandOf(box);
        return new HangView.Box(Cell.Number(box.Box.Position) with { Strong = true }, Cell.Of(piece.Name) with { Strong = true }, Cell.Of(piece.Item))
        {
            Splay = Degrees(box.Splay) with { Strong = true },
            Looks = Degrees(box.Tilt),
            Joined = box.Box.Joint is { } joint ? Cell.Of(joint.Pins > 0 ? $"{joint.Pieces} × {joint.Kind.Id}, {joint.Pins} pins" : $"{joint.Pieces} × {joint.Kind.Id}") : new Cell("no joint known") { Verdict = Paper.Tree.Verdict.CannotBeJudged },
            Rear = Force(box.Rear, box.Rear.AtMost(box.RearLimit)),
            Front = Force(box.Front, box.Front.AtMost(box.FrontLimit)),
            Use = Use(box),
            SignalIn = leads.From(driven?.In),
            SignalOut = leads.To(driven?.Out ?? []),
            MainsIn = leads.MainsIn(piece.Address) is { IsBlank: false } mains ? mains : piece.Kind is { Mains: null } ? Cell.Blank : new Cell("no circuit") { Verdict = Paper.Tree.Verdict.CannotBeJudged },
            MainsOut = leads.MainsOut(piece.Address),
            Address = Network(piece),
            Settings = Cell.Of(driven is null ? "" : new SettingWords(speech).Of(driven)),
            Top = top,
            Bottom = bottom,
        };
    }

    private Cell Degrees(Figure<Angle> angle) => angle.Value is null
        ? new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged }
        : cells.Amount(angle, one => one.Degrees, 1) with { Tbc = null };

    // The questions behind it stand once under the table. A limit that nobody knows makes the use hatched, not the force itself.
    private Cell Force(Figure<Force> force, Verdict verdict)
    {
        var cell = rigging.Shear(force) with { Tbc = null };
        return force.Value is null || verdict == Verdict.Fails ? cell with { Verdict = RiggingCells.Of(verdict) } : cell;
    }

    private static Cell Use(HangBoxPlan box)
    {
        var rear = RiggingCells.Share(Size(box.Rear), box.RearLimit, force => force.Newtons);
        var front = RiggingCells.Share(box.Front, box.FrontLimit, force => force.Newtons);
        var isRear = box.Rear.Value is { } pull && box.RearLimit.Value is { Newtons: > 0 } link && box.Front.Value is { } on && box.FrontLimit.Value is { Newtons: > 0 } pins
            ? Math.Abs(pull.Newtons) / link.Newtons > on.Newtons / pins.Newtons
            : rear.Value is null;
        return (isRear ? rear : front.Value is null ? front : rear.Value is null ? rear : front) with { Tbc = null };
    }

    private static Figure<Force> Size(Figure<Force> force) => force with { Value = force.Value is { } pull ? UnitsNet.Force.FromNewtons(Math.Abs(pull.Newtons)) : null };

    private Cell Network(Piece piece) => plan.Drive.Units.FirstOrDefault(unit => unit.Address == piece.Address) is { Network: { } address } unit
        ? Cell.Of(address.ToString()) with { Tbc = cells.NoteOf(unit.RestsOn) }
        : Cell.Blank;
}

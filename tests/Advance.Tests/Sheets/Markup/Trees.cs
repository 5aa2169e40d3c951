using Advance.Paper.Tree;
using CsCheck;

namespace Advance.Tests.Sheets.Markup;

/// <summary>Draws trees that markup can be written for.</summary>
internal static class Trees
{
    private static readonly Gen<string> Words =
        Gen.Frequency((4, Gen.Char["ab <>&\"'\t\n{}-/\u00A0\u202E\u0301"]), (1, Gen.Char)).Array[1, 8].Select(letters => new string(letters));

    private static readonly Gen<string> Ids = Gen.Char["abcdefghijklmnop0123456789/-<&"].Array[30].Select(letters => new string(letters));

    private static readonly Gen<string?> MaybeId = Gen.OneOf(Gen.Const((string?)null), Ids.Select(id => (string?)id));

    private static readonly Gen<double> Amount = Gen.OneOf(Gen.Double[-1e6, 1e6], Gen.Int[-100, 100].Select(whole => (double)whole));

    private static readonly Gen<double> Length = Gen.Double[0.1, 300];

    private static readonly Gen<TextStyle> Style = Gen.Int[0, 7].Select(style => (TextStyle)style);

    private static readonly Gen<MachineValue> Written = Gen.OneOf(
        Gen.Select(Amount, Words, (amount, unit) => (MachineValue)new NumberValue(amount, unit)),
        Gen.Int[0, 3_000_000].Select(day => (MachineValue)new DateValue(DateOnly.FromDayNumber(day))),
        Gen.Long[0, TimeOnly.MaxValue.Ticks].Select(ticks => (MachineValue)new TimeValue(new TimeOnly(ticks))),
        Gen.Long[0, DateTime.MaxValue.Ticks].Select(ticks => (MachineValue)new MomentValue(new DateTime(ticks))));

    private static readonly Gen<MachineValue> Machine = Gen.OneOf(
        Written,
        Gen.Select(Amount, Gen.Int[0, 9], (amount, decimals) => (MachineValue)new NumberValue(amount) { Decimals = decimals }),
        Gen.Select(Amount, Words, (amount, unit) => (MachineValue)new SumValue(amount, unit)));

    private static readonly Gen<Inline> Piece = Gen.Frequency(
        (4, Gen.Select(Words, Style, (words, style) => (Inline)new Text(words, style))),
        (2, Gen.Select(Words, Machine, Style, (words, value, style) => (Inline)new Datum(words, value, style))),
        (1, Gen.Const((Inline)new LineBreak())),
        (1, Words.Select(words => (Inline)new Tag(words))),
        (1, Gen.OneOf(Gen.Const(""), Words).Select(words => (Inline)new TickBox(words))),
        (1, Length.Select(mm => (Inline)new WriteIn(mm))),
        (1, Gen.Select(Gen.Double[0, 3], Gen.Double[0, 1], Gen.Bool, (share, mark, marked) => (Inline)new Bar(share, marked ? mark : null))));

    private static readonly Gen<Inline> Leading = Gen.OneOf(
        Gen.Select(Ids, Style, (id, style) => (Inline)new PageOf(id, style)),
        Gen.Select(Ids, Piece.Array[0, 3], (id, pieces) => (Inline)new Link("#" + id, Joined(pieces))));

    private static readonly Gen<IReadOnlyList<Inline>> Line = Gen.Frequency((6, Piece), (1, Leading)).Array[0, 5].Select(Joined);

    private static readonly Gen<IReadOnlyList<Inline>> SomeLine = Line.Where(line => line.Count > 0);

    private static readonly Gen<Verdict> Verdicts = Gen.Enum<Verdict>();

    private static readonly Gen<Pair> Pair = Gen.Select(Line, Line, Verdicts, (name, text, verdict) => new Pair(name, text) { Verdict = verdict });

    private static readonly Gen<Cell> Field = Gen.Select(Line, Verdicts, Written, Gen.Int[0, 2], (text, verdict, value, has) => new Cell(text) { Verdict = verdict, Value = has == 0 ? value : null });

    private static readonly Gen<Block> Simple = Gen.OneOf(
        Gen.Select(Gen.Int[1, 3], Line, (level, text) => (Block)new Heading(level, text)),
        Gen.Select(Line, Gen.Enum<Align>(), (text, align) => (Block)new Paragraph(text) { Align = align }),
        Gen.Select(Words, Length, (words, mm) => (Block)new Poster(words, mm)),
        Gen.Select(Line.Array[0, 3], Gen.Bool, (items, numbered) => (Block)new ItemList(items, numbered)),
        Gen.Select(Pair.Array[0, 3], Gen.Int[1, 4], (pairs, columns) => (Block)new Pairs(pairs) { Columns = columns }),
        Gen.Const((Block)new Rule()),
        Gen.Const((Block)new PageBreak()),
        Length.Select(mm => (Block)new Space(mm)),
        Gen.Select(Gen.Enum<Signal>(), Line, Line, Line, (signal, happens, @do, decides) => (Block)new Caution(signal, happens, @do, decides)),
        Gen.Select(Gen.Enum<RemarkWeight>(), Line, Line, (weight, text, detail) => (Block)new Remark(weight, text) { Detail = detail }),
        Gen.Select(Line, Length, Gen.Bool, (caption, mm, limited) => (Block)new Picture(Reading.Scene, caption) { MostHeightMm = limited ? mm : null }),
        Gen.Int[1, 4].SelectMany(Tables).Select(table => (Block)table),
        Gen.Select(Gen.Int[1, 4].SelectMany(Tables), Gen.Double[0.1, 0.9], Gen.Double[-5, 5].Array[20], Alongside));

    /// <summary>The blocks of a sheet.</summary>
    public static Gen<Block[]> Blocks { get; } = Nested(2).Array[0, 4];

    private static Gen<Block> Nested(int depth)
    {
        var plain = Gen.Select(Simple, MaybeId, (block, id) => block with { Id = id });
        if (depth == 0)
        {
            return plain;
        }

        var inner = Nested(depth - 1).Array[0, 3];
        return Gen.Frequency(
            (5, plain),
            (1, Gen.Select(inner, MaybeId, (blocks, id) => (Block)new KeepTogether(blocks) { Id = id })),
            (1, Gen.Select(Gen.Select(Length, inner, (share, blocks) => new ColumnsPart(share, blocks)).Array[1, 3], MaybeId, (parts, id) => (Block)new Columns(parts) { Id = id })));
    }

    private static Gen<Table> Tables(int columns)
    {
        var row = Gen.Select(Field.Array[0, columns], Gen.Enum<RowKind>(), Gen.Bool, MaybeId, Gen.Int[1, columns], (cells, kind, joins, id, span) => new Row(Spread(cells, columns, span))
        {
            Kind = kind,
            JoinsNext = joins,
            Id = id,
        });
        var group = Gen.OneOf(
            row.Array[1, 3].Select(rows => new RowGroup(rows)),
            Gen.Select(row.Array[0, 3], SomeLine, MaybeId, (rows, head, id) => new RowGroup(rows) { Head = head, Id = id }));
        var column = Gen.Select(Ids, Line, Words, Gen.Enum<Align>(), Gen.Int[0, 15], Length, (key, head, unit, align, flags, mm) => new TableColumn(key, head)
        {
            Unit = unit,
            Align = align,
            Strong = (flags & 1) > 0,
            IsKey = (flags & 2) > 0,
            LeastMm = (flags & 4) > 0 ? mm : null,
            MostMm = (flags & 8) > 0 ? mm + 1 : null,
            Grow = flags,
        });
        return Gen.Select(column.Array[columns], group.Array[0, 3], Line, row.Array[0, 2], Line, Gen.Bool, (heads, groups, caption, foot, empty, shows) => new Table(heads, groups)
        {
            Caption = caption,
            Foot = foot,
            WhenEmpty = empty,
            ShowsHead = shows,
        });
    }

    // Widens the first cell as far as the row has room.
    private static Cell[] Spread(Cell[] cells, int columns, int span) =>
        cells.Length == 0 ? cells : [cells[0] with { Span = Math.Min(span, columns - cells.Length + 1) }, .. cells[1..]];

    private static Block Alongside(Table table, double share, double[] tops)
    {
        var rows = table.Groups.SelectMany(group => group.Rows);
        return new Alongside(Reading.Scene, [.. rows.Select((_, i) => new Band(tops[i % tops.Length], tops[i % tops.Length] + i))], table) { PictureShare = share };
    }

    // Two texts of one style that follow each other are one text: markup cannot tell them apart.
    private static IReadOnlyList<Inline> Joined(Inline[] pieces)
    {
        var line = new List<Inline>();
        foreach (var piece in pieces)
        {
            if (piece is Text text && line is [.., Text last] && last.Style == text.Style)
            {
                line[^1] = last with { Value = last.Value + text.Value };
            }
            else
            {
                line.Add(piece);
            }
        }

        return line;
    }
}

namespace Advance.Reading.Phrases;

/// <summary>The units of one kind of quantity.</summary>
internal sealed class UnitKind
{
    // What follows a number whose unit was forgotten: 0.6 above floor.
    private static readonly string[] Followers = ["above", "below", "off", "of", "for", "at", "in", "to", "SR", "SL", "US", "DS", "weighed", "measured", "maker", "estimated"];

    private static readonly string[] Tons = ["ton", "tons", "Ton", "Tons"];

    private readonly Unit[] units;

    /// <param name="quantity">With its article, to follow on "is asked for": <c>a length</c>.</param>
    /// <param name="units">The first is the base unit or the commonest.</param>
    public UnitKind(string quantity, params Unit[] units)
    {
        Quantity = quantity;
        this.units = units;
        Offered = string.Join(", ", units.Where(unit => unit.IsOffered).Select(unit => unit.Symbol));
    }

    /// <summary>With its article: <c>a length</c>.</summary>
    public string Quantity { get; }

    /// <summary>The units to choose from, for a finding.</summary>
    public string Offered { get; }

    /// <summary>The pattern of any of the units.</summary>
    public string Pattern =>
        Patterns.AnyOf(units.Select(unit => unit.Symbol)).Replace("u", "[uµμ]").Replace("2", "[2²]").Replace("3", "[3³]") + Patterns.UnitEnd;

    /// <summary>The unit written so.</summary>
    public Unit? Find(ReadOnlySpan<char> symbol)
    {
        var plain = symbol.ToString().Replace('²', '2').Replace('³', '3');
        foreach (var unit in units)
        {
            if (unit.Symbol == plain)
            {
                return unit;
            }
        }

        return null;
    }

    /// <summary>Reads the unit that belongs to a number.</summary>
    /// <param name="cursor">Right after the number; spaces are skipped.</param>
    /// <param name="number">Where the number starts.</param>
    /// <returns>Null with a fault where there is none.</returns>
    public Unit? Read(Cursor cursor, int number)
    {
        var end = cursor.At;
        cursor.SkipSpaces();
        var at = cursor.At;
        var symbol = Symbol(cursor.Text.AsSpan(at));
        if (Find(symbol) is { } unit)
        {
            cursor.At += symbol.Length;
            return unit;
        }

        cursor.Fail(FaultOf(cursor, number, end, at, symbol.ToString()));
        return null;
    }

    /// <summary>What could be a unit: letters, and the signs and powers that stand in units.</summary>
    public static ReadOnlySpan<char> Symbol(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && (char.IsLetter(text[length]) || text[length] is '%' or '°' or '/' or '\'' or '"' || (length > 0 && text[length] is '2' or '3' or '²' or '³')))
        {
            length++;
            if (text[length - 1] is '\'' or '"')
            {
                break;
            }
        }

        return text[..length];
    }

    private PhraseFault FaultOf(Cursor cursor, int number, int end, int at, string symbol)
    {
        if (symbol.Length == 0 || Followers.Contains(symbol))
        {
            return PhraseFaults.WhichUnit(number, cursor.Written(number, end), Offered);
        }

        if (Tons.Contains(symbol))
        {
            return PhraseFaults.Ton(at, symbol);
        }

        if (Spelling(symbol) is { } right)
        {
            return PhraseFaults.UnitSpelling(at, symbol, right);
        }

        return UnitKinds.All.FirstOrDefault(kind => kind != this && kind.Find(symbol) is not null) is { } other
            ? PhraseFaults.WrongKind(at, symbol, other.Quantity, Quantity, Offered)
            : PhraseFaults.NoSuchUnit(at, symbol, Quantity, Offered);
    }

    private string? Spelling(string symbol)
    {
        var spoken = UnitKinds.LongNames.FirstOrDefault(name => symbol.Equals(name.Long, StringComparison.OrdinalIgnoreCase)).Symbol;
        return spoken is not null && Find(spoken) is not null
            ? spoken
            : Array.Find(units, unit => unit.Symbol.Equals(symbol, StringComparison.OrdinalIgnoreCase))?.Symbol;
    }
}

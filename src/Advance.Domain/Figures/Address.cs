namespace Advance.Domain.Figures;

/// <summary>
/// The name of a piece, a row or a figure: <c>power/PD1/3/in-use</c>. Made of names, never of indexes, so that adding an unrelated thing
/// changes no address. Explain, accept, compare, labels and page links hang on it. A slash inside a name is written <c>~1</c> and a tilde
/// <c>~0</c>, as in RFC 6901.
/// </summary>
public readonly record struct Address : IComparable<Address>
{
    private readonly string? text;

    private Address(string text) => this.text = text;

    /// <summary>The address in full; empty for the default.</summary>
    public string Text => text ?? "";

    /// <summary>Starts an address with the name of a family or department.</summary>
    public static Address Of(string root) => new(Escape(root));

    /// <summary>Reads an address that was printed.</summary>
    public static Address Read(string text) => new(text);

    /// <summary>The address of a part.</summary>
    public static Address operator /(Address whole, string part) => new($"{whole.Text}/{Escape(part)}");

    /// <summary>The address of a numbered part: the number is a name (a channel, a circuit), not an index.</summary>
    public static Address operator /(Address whole, int part) => new($"{whole.Text}/{part}");

    /// <summary>The address of a part; the same as the operator.</summary>
    public static Address Divide(Address whole, string part) => whole / part;

    /// <summary>Names in order, with runs of digits as numbers: 2 comes before 10.</summary>
    public int CompareTo(Address other) => Naming.Natural.Compare(Text, other.Text);

    /// <summary>The address in full.</summary>
    public override string ToString() => Text;

    private static string Escape(string name) => name.Replace("~", "~0").Replace("/", "~1");
}

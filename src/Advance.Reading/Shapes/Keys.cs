using Advance.Domain.Facts;

namespace Advance.Reading.Shapes;

/// <summary>
/// The keys of a record while they are declared, one a line: name, shape, and words for the reference. Each declaration gives a function
/// from the record's row to the value, so that what builds the record is typed throughout.
/// </summary>
internal sealed class Keys
{
    private readonly List<Field> fields = [];
    private readonly List<KeyRule> rules = [];

    /// <summary>What has been declared, in order.</summary>
    public IReadOnlyList<Field> Fields => fields;

    /// <summary>What holds between the keys.</summary>
    public IReadOnlyList<KeyRule> Rules => rules;

    /// <summary>Two keys that say the same, of which one must be written.</summary>
    public void OneOf(string one, string other) => rules.Add(new OneOfKeys(one, other, isNeeded: true));

    /// <summary>Two keys that say the same, of which one may be written.</summary>
    public void AtMostOneOf(string one, string other) => rules.Add(new OneOfKeys(one, other, isNeeded: false));

    /// <summary>Keys that are written together or not at all, and others that may only be written with them.</summary>
    public void Together(IReadOnlyList<string> together, IReadOnlyList<string> with) => rules.Add(new KeysTogether(together, with));

    /// <summary>A key that must be written.</summary>
    public Func<Row, T> Needed<T>(string key, Shape<T> shape, string words)
        where T : notnull => Add<T, T>(new FieldOf<T>(key, shape, words, null, (_, _) => null));

    /// <summary>A key that may be left out; the value is null then.</summary>
    public Func<Row, T?> Optional<T>(string key, Shape<T> shape, string words)
        where T : class => Add<T, T?>(new FieldOf<T>(key, shape, words, "nothing", (_, _) => null));

    /// <summary>A key that may be left out, where something else stands then.</summary>
    /// <param name="key">As written.</param>
    /// <param name="shape">What may be written after it.</param>
    /// <param name="otherwise">The value where it is left out.</param>
    /// <param name="words">What it is for.</param>
    /// <param name="said">The value where it is left out, in words for the reference.</param>
    public Func<Row, T> Defaulted<T>(string key, Shape<T> shape, T otherwise, string words, string said)
        where T : notnull => Add<T, T>(new FieldOf<T>(key, shape, words, said, (_, _) => otherwise));

    /// <summary>A list, a map or a table that may be left out; it is empty then.</summary>
    public Func<Row, IReadOnlyList<T>> Any<T>(string key, Shape<IReadOnlyList<T>> shape, string words) =>
        Add<IReadOnlyList<T>, IReadOnlyList<T>>(new FieldOf<IReadOnlyList<T>>(key, shape, words, "none", (_, _) => Array.Empty<T>()));

    /// <summary>A key whose value a sum needs: left out, it is an open question.</summary>
    public Func<Row, Given<T>> Asked<T>(string key, Shape<T> shape, string words)
        where T : notnull =>
        Add<Given<T>, Given<T>>(new FieldOf<Given<T>>(key, new GivenShape<T>(shape), words, "to be confirmed", (at, reader) => Given.Unknown<T>(at, reader.Miss(at))));

    /// <summary>A key that may be left out, and may be open where it is written; the value is null where it is left out.</summary>
    public Func<Row, Given<T>?> Open<T>(string key, Shape<T> shape, string words)
        where T : notnull => Add<Given<T>, Given<T>?>(new FieldOf<Given<T>>(key, new GivenShape<T>(shape), words, "nothing", (_, _) => null));

    internal Func<Row, TValue> Add<T, TValue>(FieldOf<T> field)
        where T : notnull
    {
        var index = fields.Count;
        fields.Add(field);
        return row => (TValue)row[index]!;
    }
}

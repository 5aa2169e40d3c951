namespace Advance.Reading.Shapes;

/// <summary>Keys whose values are structures: left out, they are null as those of classes are.</summary>
internal static class KeysOfValues
{
    /// <summary>A key that may be left out; the value is null then.</summary>
    public static Func<Row, T?> Optional<T>(this Keys keys, string key, Shape<T> shape, string words)
        where T : struct => keys.Add<T, T?>(new FieldOf<T>(key, shape, words, "nothing", (_, _) => null));
}

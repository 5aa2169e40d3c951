using Advance.Domain.Facts;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A key whose value has a type.</summary>
/// <param name="key">As written.</param>
/// <param name="shape">What may be written after it.</param>
/// <param name="words">What it is for.</param>
/// <param name="otherwise">What stands for it when it is left out, in words; null where it is needed.</param>
/// <param name="absent">The value where nothing was written.</param>
internal sealed class FieldOf<T>(string key, Shape<T> shape, string words, string? otherwise, Func<Mark, Reader, object?> absent) : Field(key, shape, words)
    where T : notnull
{
    /// <inheritdoc/>
    public override bool IsNeeded => otherwise is null;

    /// <inheritdoc/>
    public override string Otherwise => otherwise ?? "";

    /// <inheritdoc/>
    protected override object? Absent(Mark at, Reader reader) => absent(at, reader);

    /// <inheritdoc/>
    protected override bool ReadValue(Node node, Reader reader, out object? value)
    {
        var isRead = shape.TryRead(node, reader, out var read);
        value = isRead ? read : null;
        return isRead;
    }
}

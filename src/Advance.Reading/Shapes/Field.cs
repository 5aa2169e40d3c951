using Advance.Domain.Facts;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A key of a record.</summary>
/// <param name="key">As written.</param>
/// <param name="shape">What may be written after it.</param>
/// <param name="words">What it is for, for the reference.</param>
internal abstract class Field(string key, Shape shape, string words)
{
    public string Key { get; } = key;

    public Shape Shape { get; } = shape;

    public string Words { get; } = words;

    /// <summary>Whether it must be written.</summary>
    public abstract bool IsNeeded { get; }

    /// <summary>What stands for it when it is left out, in words for the reference; empty where it is needed.</summary>
    public abstract string Otherwise { get; }

    /// <summary>Reads its value.</summary>
    /// <param name="node">What was written; null where the key was not.</param>
    /// <param name="at">The key, or the record where the key was not written.</param>
    /// <param name="where">The record, for findings.</param>
    /// <param name="reader">Takes findings and questions.</param>
    /// <param name="value">The value, boxed.</param>
    public bool TryRead(Node? node, Mark at, string where, Reader reader, out object? value)
    {
        value = null;
        reader.Enter(Key, at);
        var isRead = node is null || (IsBlank(node) && !(IsNeeded && Shape.TakesTbc)) ? TryLeaveOut(node, at, where, reader, out value) : TryValue(node, reader, out value);
        reader.Leave();
        return isRead;
    }

    /// <summary>The value where nothing was written; may only be called for keys that are not needed.</summary>
    protected abstract object? Absent(Mark at, Reader reader);

    /// <summary>Reads what was written.</summary>
    protected abstract bool ReadValue(Node node, Reader reader, out object? value);

    private static bool IsBlank(Node node) => node is ScalarNode { IsBlank: true } and not BlockNode;

    private bool TryLeaveOut(Node? node, Mark at, string where, Reader reader, out object? value)
    {
        if (IsNeeded)
        {
            value = null;
            return reader.Fault(node is null ? ShapeFindings.Missing(at, Key, where, Shape.Example) : ShapeFindings.Blank(at, Key, Shape.Example));
        }

        value = Absent(at, reader);
        return true;
    }

    private bool TryValue(Node node, Reader reader, out object? value)
    {
        Node? rest = node;
        value = null;
        if (!Shape.TakesTbc && !Settling.TrySettle(node, reader, out rest, out _))
        {
            return false;
        }

        if (rest is not null)
        {
            return ReadValue(rest, reader, out value);
        }

        if (IsNeeded)
        {
            return reader.Fault(ShapeFindings.NeededNow(node.At, Key, Shape.Example));
        }

        value = Absent(node.At, reader);
        return true;
    }
}

namespace Advance.Profile;

/// <summary>A method that was compiled at run time.</summary>
/// <param name="Text">All of it, as the log has it.</param>
/// <param name="Owner">The type it stands in.</param>
/// <param name="Name">Without arguments.</param>
/// <param name="Arguments">Its own type arguments.</param>
/// <param name="Parameters">How many it takes.</param>
internal sealed record MethodName(string Text, TypeName Owner, string Name, IReadOnlyList<TypeName> Arguments, int Parameters)
{
    private const string Told = "JIT compiled ";

    public bool IsGeneric => Owner.Arguments.Count + Arguments.Count > 0;

    /// <summary>The method of a line of the log; null where it tells of none that a profile can name.</summary>
    public static MethodName? InLine(string line)
    {
        var start = line.IndexOf(Told, StringComparison.Ordinal);
        var stop = line.LastIndexOf(" [", StringComparison.Ordinal);
        if (start < 0 || stop < start)
        {
            return null;
        }

        var text = line[(start + Told.Length)..stop];
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var bracket = text.IndexOf('(', Math.Max(0, colon));
        // Stubs have no type, and the methods of arrays belong to none that could be named.
        if (colon < 0 || bracket < 0 || text.StartsWith('(') || text.StartsWith("System.SZArrayHelper", StringComparison.Ordinal))
        {
            return null;
        }

        // A name may have commas, where it is that of an interface's member, but no brackets.
        var name = text[(colon + 1)..bracket];
        var end = name.IndexOf('[', StringComparison.Ordinal) is var found and >= 0 ? found : name.Length;
        return new MethodName(text, TypeName.Of(text[..colon]), name[..end], TypeName.Of(name[end..]).Arguments, CountIn(text[bracket..]));
    }

    private static int CountIn(string parameters)
    {
        var (depth, commas, any) = (0, 0, false);
        foreach (var letter in parameters)
        {
            depth += letter is '(' or '[' ? 1 : letter is ')' or ']' ? -1 : 0;
            if (depth == 0)
            {
                break;
            }

            commas += depth == 1 && letter == ',' ? 1 : 0;
            any |= letter is not '(';
        }

        return any ? commas + 1 : 0;
    }
}

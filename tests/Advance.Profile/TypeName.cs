namespace Advance.Profile;

/// <summary>A type as the runtime's log writes it: <c>System.Collections.Generic.List`1[System.__Canon][]</c>.</summary>
/// <param name="Text">With namespace and outer types.</param>
/// <param name="Arguments">Of the type and its outer types, in order.</param>
/// <param name="Ranks">How many times it is an array.</param>
internal sealed record TypeName(string Text, IReadOnlyList<TypeName> Arguments, int Ranks)
{
    public static TypeName Of(string text)
    {
        var at = 0;
        return Read(text, ref at);
    }

    private static TypeName Read(string text, ref int at)
    {
        var start = at;
        while (at < text.Length && text[at] is not ('[' or ']' or ','))
        {
            at++;
        }

        var name = text[start..at];
        var arguments = new List<TypeName>();
        var ranks = 0;
        while (at < text.Length && text[at] == '[')
        {
            at++;
            if (text[at] == ']')
            {
                ranks++;
                at++;
                continue;
            }

            do
            {
                arguments.Add(Read(text, ref at));
            }
            while (text[at++] == ',');
        }

        return new TypeName(name, arguments, ranks);
    }
}

using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>What a partial was given, for those parameters that may be left out: <c>given.note</c> is nothing where there is no note.</summary>
internal sealed class GivenParameters(ScriptObject parameters)
{
    public object? Find(string name) => parameters.TryGetValue(null, default, name, out var value) ? value : null;
}

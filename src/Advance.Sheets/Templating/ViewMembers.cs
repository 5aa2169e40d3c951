using System.Collections.Concurrent;
using System.Reflection;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Advance.Sheets.Templating;

/// <summary>Shows the public properties of one type of view to templates: read only, in snake case, and words of an enumeration as text.</summary>
internal sealed class ViewMembers : IObjectAccessor
{
    private static readonly ConcurrentDictionary<Type, ViewMembers> Known = new();

    private readonly Dictionary<string, PropertyInfo> members;

    private ViewMembers(Type view)
    {
        members = view.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0)
            .ToDictionary(property => SnakeCase.Of(property.Name), StringComparer.Ordinal);
    }

    /// <summary>The members of a type, looked up once.</summary>
    public static ViewMembers Of(Type view) => Known.GetOrAdd(view, static type => new ViewMembers(type));

    public IReadOnlyCollection<string> Names => members.Keys;

    public bool HasIndexer => false;

    public Type? IndexType => null;

    public object? Get(object view, string member) =>
        members[member].GetValue(view) is var value && value is Enum word ? SnakeCase.Of(word.ToString(), '-') : value;

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => members.Count;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) => members.Keys;

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => members.ContainsKey(member);

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        var has = members.ContainsKey(member);
        value = has ? Get(target, member) : null;
        return has;
    }

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object? value)
    {
        value = null;
        return false;
    }

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;
}

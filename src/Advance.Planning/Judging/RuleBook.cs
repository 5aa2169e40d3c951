namespace Advance.Planning;

/// <summary>All rules there are, found in this assembly, by name.</summary>
public static class RuleBook
{
    private static readonly Lazy<IReadOnlyList<Rule>> Found = new(Discover);

    /// <summary>Every rule, in the order of their names.</summary>
    public static IReadOnlyList<Rule> Rules => Found.Value;

    private static IReadOnlyList<Rule> Discover() =>
    [
        .. typeof(Rule).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Rule)) && !type.IsAbstract)
            .Select(type => (Rule)Activator.CreateInstance(type)!)
            .OrderBy(rule => rule.Name, StringComparer.Ordinal),
    ];
}

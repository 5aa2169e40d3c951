namespace Advance.Profile;

/// <summary>
/// The types that code was compiled for, as the runtime's map of addresses names them. Where the log has the number that an enumeration is
/// kept as, the map has the enumeration; it lacks the type arguments of methods, which the log has.
/// </summary>
internal sealed class MappedTypes
{
    private readonly PublishedTypes published;
    private readonly ILookup<(string Type, string Method), TypeName> owners;

    /// <summary>Reads a map.</summary>
    public MappedTypes(IEnumerable<string> lines, PublishedTypes published)
    {
        this.published = published;
        owners = lines.Select(OwnerIn).OfType<(string Owner, string Name)>().Distinct()
            .Select(one => (Owner: TypeName.Of(one.Owner), one.Name)).ToLookup(one => (one.Owner.Text, one.Name), one => one.Owner);
    }

    /// <summary>A method of the log, and the same for each enumeration that it may stand for.</summary>
    public IEnumerable<MethodName> Meant(MethodName method) =>
        owners[(method.Owner.Text, method.Name)].Where(owner => IsMeant(method.Owner, owner)).Select(owner => method with { Owner = owner }).Prepend(method);

    // "7f00 b8 instance class X [System.Linq] System.Linq.Lookup`2[Advance.Domain.Places.Side,System.__Canon]::get_Item(!0)[Tier0]"
    private static (string Owner, string Name)? OwnerIn(string line)
    {
        var colons = line.IndexOf("::", StringComparison.Ordinal);
        var start = colons < 0 ? -1 : line.LastIndexOf("] ", colons, StringComparison.Ordinal);
        var bracket = colons < 0 ? -1 : line.IndexOf('(', colons);
        return start < 0 || bracket < 0 ? null : (line[(start + 2)..colons], line[(colons + 2)..bracket]);
    }

    private bool IsMeant(TypeName logged, TypeName mapped) =>
        logged.Ranks == mapped.Ranks
        && (logged.Text == mapped.Text
            ? logged.Arguments.Count == mapped.Arguments.Count && logged.Arguments.Zip(mapped.Arguments, IsMeant).All(isMeant => isMeant)
            : logged.Text == published.Underlying(mapped.Text));
}

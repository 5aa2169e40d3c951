using System.Collections.Immutable;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Advance.Profile;

/// <summary>The types of a published program, its runtime's included, by name. One name may be that of several: assemblies have private types.</summary>
internal sealed class PublishedTypes
{
    private const string Core = "System.Private.CoreLib";

    private readonly Dictionary<string, List<(MetadataReader In, TypeDefinitionHandle Type)>> byName = new(StringComparer.Ordinal);

    /// <summary>Reads all assemblies of a folder.</summary>
    public PublishedTypes(string folder)
    {
        var assemblies = Directory.GetFiles(folder, "*.dll").Select(Open).OfType<MetadataReader>().OrderBy(reader => AssemblyOf(reader) != Core).ThenBy(AssemblyOf, StringComparer.Ordinal);
        foreach (var assembly in assemblies)
        {
            foreach (var type in assembly.TypeDefinitions)
            {
                var name = FullName(assembly, type);
                byName.TryAdd(name, []);
                byName[name].Add((assembly, type));
            }
        }
    }

    public static string AssemblyOf(MetadataReader reader) => reader.GetString(reader.GetAssemblyDefinition().Name);

    /// <summary>All types of a name, those of the core library first; empty where there is none.</summary>
    public IReadOnlyList<(MetadataReader In, TypeDefinitionHandle Type)> Named(string name) => byName.GetValueOrDefault(name) ?? [];

    private static MetadataReader? Open(string path)
    {
        var file = new PEReader([.. File.ReadAllBytes(path)]);
        try
        {
            return file.HasMetadata && file.GetMetadataReader() is { IsAssembly: true } reader ? reader : null;
        }
        catch (BadImageFormatException)
        {
            return null;
        }
    }

    private static string FullName(MetadataReader reader, TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        var (name, space) = (reader.GetString(type.Name), reader.GetString(type.Namespace));
        return type.IsNested ? $"{FullName(reader, type.GetDeclaringType())}+{name}" : space.Length > 0 ? $"{space}.{name}" : name;
    }
}

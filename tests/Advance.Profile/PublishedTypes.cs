using System.Collections.Immutable;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Advance.Profile;

/// <summary>The types of a published program, its runtime's included, by name. One name may be that of several: assemblies have private types.</summary>
internal sealed class PublishedTypes
{
    private const string Core = "System.Private.CoreLib";

    private static readonly Dictionary<SignatureTypeCode, string> Numbers = new()
    {
        [SignatureTypeCode.SByte] = "byte",
        [SignatureTypeCode.Byte] = "ubyte",
        [SignatureTypeCode.Int16] = "short",
        [SignatureTypeCode.UInt16] = "ushort",
        [SignatureTypeCode.Int32] = "int",
        [SignatureTypeCode.UInt32] = "uint",
        [SignatureTypeCode.Int64] = "long",
        [SignatureTypeCode.UInt64] = "ulong",
    };

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

    /// <summary>What the log calls an enumeration; null where the name is that of none.</summary>
    public string? Underlying(string name) => Named(name) is [var (reader, type), ..] && IsEnumeration(reader, reader.GetTypeDefinition(type))
        ? Numbers.GetValueOrDefault(reader.GetTypeDefinition(type).GetFields().Select(reader.GetFieldDefinition).Where(field => !field.Attributes.HasFlag(FieldAttributes.Static)).Select(field => reader.GetBlobReader(field.Signature)).Select(TypeOf).First())
        : null;

    private static bool IsEnumeration(MetadataReader reader, TypeDefinition type) => !type.BaseType.IsNil && type.BaseType.Kind switch
    {
        HandleKind.TypeReference => reader.GetString(reader.GetTypeReference((TypeReferenceHandle)type.BaseType).Name) == "Enum",
        HandleKind.TypeDefinition => reader.GetString(reader.GetTypeDefinition((TypeDefinitionHandle)type.BaseType).Name) == "Enum",
        _ => false,
    };

    private static SignatureTypeCode TypeOf(BlobReader signature)
    {
        signature.ReadSignatureHeader();
        return signature.ReadSignatureTypeCode();
    }

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

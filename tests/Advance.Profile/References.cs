using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace Advance.Profile;

/// <summary>What a profile refers to: types of a program, by assembly and name.</summary>
internal sealed class References(MetadataBuilder metadata)
{
    private readonly Dictionary<string, AssemblyReferenceHandle> assemblies = new(StringComparer.Ordinal);
    private readonly Dictionary<(EntityHandle Scope, string Space, string Name), TypeReferenceHandle> types = [];

    /// <summary>What stands for all reference types in code that they share; the compiler knows it by this name.</summary>
    public TypeReferenceHandle Shared => Type(Assembly("System.Private.Canon", new Version(0, 0, 0, 0)), "System", "__Canon");

    public TypeReferenceHandle To(MetadataReader reader, TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        var assembly = reader.GetAssemblyDefinition();
        EntityHandle scope = type.IsNested ? To(reader, type.GetDeclaringType()) : Assembly(reader.GetString(assembly.Name), assembly.Version);
        return Type(scope, reader.GetString(type.Namespace), reader.GetString(type.Name));
    }

    public TypeReferenceHandle To(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        EntityHandle scope;
        if (type.ResolutionScope.Kind == HandleKind.TypeReference)
        {
            scope = To(reader, (TypeReferenceHandle)type.ResolutionScope);
        }
        else
        {
            var assembly = reader.GetAssemblyReference((AssemblyReferenceHandle)type.ResolutionScope);
            scope = Assembly(reader.GetString(assembly.Name), assembly.Version);
        }

        return Type(scope, reader.GetString(type.Namespace), reader.GetString(type.Name));
    }

    private AssemblyReferenceHandle Assembly(string name, Version version)
    {
        if (!assemblies.TryGetValue(name, out var assembly))
        {
            assemblies[name] = assembly = metadata.AddAssemblyReference(metadata.GetOrAddString(name), version, default, default, default, default);
        }

        return assembly;
    }

    private TypeReferenceHandle Type(EntityHandle scope, string space, string name)
    {
        if (!types.TryGetValue((scope, space, name), out var type))
        {
            types[(scope, space, name)] = type = metadata.AddTypeReference(scope, space.Length > 0 ? metadata.GetOrAddString(space) : default, metadata.GetOrAddString(name));
        }

        return type;
    }
}

using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Advance.Profile;

/// <summary>
/// Writes methods down as the compiler that compiles ahead reads them (<c>.mibc</c>): an assembly in which a method <c>AssemblyDictionary</c>
/// names one method for each assembly of the program, and that one loads a token of each method to be compiled.
/// </summary>
internal sealed class ProfileWriter
{
    private const byte GenericMethod = 0x0A;

    private static readonly Guid NoId = new("6f6e9f86-6b2c-4f1c-9f57-1a4f8b6f5a01");
    private static readonly byte[] TakesAndGivesNothing = [0, 0, 1];
    private static readonly string[] Primitives =
        ["", "void", "bool", "char", "byte", "ubyte", "short", "ushort", "int", "uint", "long", "ulong", "float", "double"];

    private readonly PublishedTypes published;
    private readonly MetadataBuilder metadata = new();
    private readonly References references;
    private readonly SignatureCopy signatures;
    private readonly SortedDictionary<string, List<EntityHandle>> methods = new(StringComparer.Ordinal);

    public ProfileWriter(PublishedTypes published)
    {
        this.published = published;
        references = new References(metadata);
        signatures = new SignatureCopy(references);
    }

    /// <summary>
    /// Takes a method up. The log has no types of parameters that could be told apart with certainty, so that all of its name and number of
    /// parameters are taken. False where a type of it is not known.
    /// </summary>
    public bool Add(MethodName method)
    {
        var arguments = method.Owner.Arguments.Concat(method.Arguments).Select(Encoded).ToList();
        if (arguments.Contains(null))
        {
            return false;
        }

        var known = arguments.OfType<byte[]>().ToList();
        var found = (
            from owner in published.Named(method.Owner.Text)
            where owner.In.GetTypeDefinition(owner.Type).GetGenericParameters().Count == method.Owner.Arguments.Count
            from handle in owner.In.GetTypeDefinition(owner.Type).GetMethods()
            let definition = owner.In.GetMethodDefinition(handle)
            where owner.In.GetString(definition.Name) == method.Name && definition.GetGenericParameters().Count == method.Arguments.Count
            let signature = definition.DecodeSignature(signatures, null)
            where signature.ParameterTypes.Length == method.Parameters
            select (owner.In, owner.Type, Signature: signature)).ToList();
        foreach (var (reader, type, signature) in found)
        {
            var owner = Owner(reader, type, known[..method.Owner.Arguments.Count]);
            var assembly = PublishedTypes.AssemblyOf(reader);
            methods.TryAdd(assembly, []);
            methods[assembly].Add(Token(owner, method.Name, signature, known[method.Owner.Arguments.Count..]));
        }

        return found.Count > 0;
    }

    /// <summary>The whole profile; the same methods give the same bytes.</summary>
    public byte[] Finish()
    {
        var code = new BlobBuilder();
        var bodies = new MethodBodyStreamEncoder(code);
        var none = metadata.GetOrAddBlob(TakesAndGivesNothing);
        var groups = methods.Keys.Select((name, index) => (Name: name, Token: (EntityHandle)MetadataTokens.MethodDefinitionHandle(index + 2))).ToList();
        Define("AssemblyDictionary", Body(bodies, groups.Select(group => ((string?)group.Name, group.Token))), none);
        foreach (var (name, tokens) in methods)
        {
            Define($"Assemblies_{name}", Body(bodies, tokens.Select(token => ((string?)null, token))), none);
        }

        metadata.AddTypeDefinition(
            default, default, metadata.GetOrAddString("<Module>"), default, MetadataTokens.FieldDefinitionHandle(1), MetadataTokens.MethodDefinitionHandle(1));
        metadata.AddModule(0, metadata.GetOrAddString("profile.dll"), metadata.GetOrAddGuid(NoId), default, default);
        metadata.AddAssembly(metadata.GetOrAddString("profile"), new Version(1, 0, 0, 0), default, default, default, AssemblyHashAlgorithm.None);
        var file = new ManagedPEBuilder(
            PEHeaderBuilder.CreateLibraryHeader(), new MetadataRootBuilder(metadata), code, deterministicIdProvider: _ => new BlobContentId(NoId, 1));
        var bytes = new BlobBuilder();
        file.Serialize(bytes);
        return bytes.ToArray();
    }

    private int Body(MethodBodyStreamEncoder bodies, IEnumerable<(string? Text, EntityHandle Token)> loads)
    {
        var code = new InstructionEncoder(new BlobBuilder());
        foreach (var (text, token) in loads)
        {
            if (text is not null)
            {
                code.LoadString(metadata.GetOrAddUserString($"{text};"));
            }

            code.OpCode(ILOpCode.Ldtoken);
            code.Token(token);
            code.OpCode(ILOpCode.Pop);
        }

        code.OpCode(ILOpCode.Ret);
        return bodies.AddMethodBody(code);
    }

    private void Define(string name, int body, BlobHandle signature) => metadata.AddMethodDefinition(
        MethodAttributes.Public | MethodAttributes.Static, MethodImplAttributes.IL, metadata.GetOrAddString(name), signature, body, MetadataTokens.ParameterHandle(1));

    private EntityHandle Owner(MetadataReader reader, TypeDefinitionHandle type, IReadOnlyList<byte[]> arguments)
    {
        var reference = references.To(reader, type);
        if (arguments.Count == 0)
        {
            return reference;
        }

        var named = SignatureCopy.Named(reference, SignatureCopy.IsValue(reader, reader.GetTypeDefinition(type)));
        return metadata.AddTypeSpecification(metadata.GetOrAddBlob(SignatureCopy.InstanceOf(named, arguments)));
    }

    private EntityHandle Token(EntityHandle owner, string name, MethodSignature<byte[]> signature, IReadOnlyList<byte[]> arguments)
    {
        byte[] generic = arguments.Count > 0 ? SignatureCopy.Number(arguments.Count) : [];
        byte[] bytes =
        [
            signature.Header.RawValue,
            .. generic,
            .. SignatureCopy.Number(signature.ParameterTypes.Length),
            .. signature.ReturnType,
            .. signature.ParameterTypes.SelectMany(parameter => parameter),
        ];
        var method = metadata.AddMemberReference(owner, metadata.GetOrAddString(name), metadata.GetOrAddBlob(bytes));
        byte[] instance = [GenericMethod, .. generic, .. arguments.SelectMany(argument => argument)];
        return arguments.Count == 0 ? method : metadata.AddMethodSpecification(method, metadata.GetOrAddBlob(instance));
    }

    /// <summary>A type in a signature; null where there is none of that name.</summary>
    private byte[]? Encoded(TypeName name)
    {
        if (name.Ranks > 0)
        {
            return Encoded(name with { Ranks = name.Ranks - 1 }) is { } element ? SignatureCopy.ArrayOf(element) : null;
        }

        var arguments = name.Arguments.Select(Encoded).ToList();
        if (Plain(name.Text) is { } plain)
        {
            return plain;
        }

        if (arguments.Contains(null) || published.Named(name.Text) is not [var (reader, type), ..])
        {
            return null;
        }

        var named = SignatureCopy.Named(references.To(reader, type), SignatureCopy.IsValue(reader, reader.GetTypeDefinition(type)));
        return arguments.Count == 0 ? named : SignatureCopy.InstanceOf(named, [.. arguments.OfType<byte[]>()]);
    }

    private byte[]? Plain(string name) => name switch
    {
        "System.String" => [(byte)PrimitiveTypeCode.String],
        "System.Object" => [(byte)PrimitiveTypeCode.Object],
        "System.__Canon" => SignatureCopy.Named(references.Shared, isValue: false),
        "nint" => [(byte)PrimitiveTypeCode.IntPtr],
        "nuint" => [(byte)PrimitiveTypeCode.UIntPtr],
        _ => Array.IndexOf(Primitives, name) is var code and > 0 ? [(byte)code] : null,
    };
}

using System.Collections.Immutable;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace Advance.Profile;

/// <summary>Writes the signature of a method once more, with the references of the profile; in the bytes of ECMA-335, II.23.2.</summary>
internal sealed class SignatureCopy(References references) : ISignatureTypeProvider<byte[], object?>
{
    private const byte Pointer = 0x0F, ByReference = 0x10, ValueType = 0x11, Class = 0x12, TypeParameter = 0x13, Array = 0x14, Instance = 0x15;
    private const byte Vector = 0x1D, MethodParameter = 0x1E, Required = 0x1F, Optional = 0x20, Pinned = 0x45;

    /// <summary>Whether a type is a struct or an enumeration.</summary>
    public static bool IsValue(MetadataReader reader, TypeDefinition type) =>
        type.BaseType.Kind == HandleKind.TypeReference
            ? reader.GetString(reader.GetTypeReference((TypeReferenceHandle)type.BaseType).Name) is "ValueType" or "Enum"
            : type.BaseType is { Kind: HandleKind.TypeDefinition, IsNil: false }
                && reader.GetString(reader.GetTypeDefinition((TypeDefinitionHandle)type.BaseType).Name) is "ValueType" or "Enum"
                && reader.GetString(type.Name) != "Enum";

    /// <summary>A class or struct.</summary>
    public static byte[] Named(TypeReferenceHandle type, bool isValue) =>
        [isValue ? ValueType : Class, .. Number((MetadataTokens.GetRowNumber(type) << 2) | 1)];

    public static byte[] Number(int number)
    {
        var bytes = new BlobBuilder();
        bytes.WriteCompressedInteger(number);
        return bytes.ToArray();
    }

    public static byte[] ArrayOf(byte[] element) => [Vector, .. element];

    public static byte[] InstanceOf(byte[] type, IReadOnlyCollection<byte[]> arguments) =>
        [Instance, .. type, .. Number(arguments.Count), .. arguments.SelectMany(argument => argument)];

    public byte[] GetArrayType(byte[] elementType, ArrayShape shape) =>
        [Array, .. elementType, .. Number(shape.Rank), .. Counted(shape.Sizes), .. Counted(shape.LowerBounds)];

    public byte[] GetByReferenceType(byte[] elementType) => [ByReference, .. elementType];

    public byte[] GetFunctionPointerType(MethodSignature<byte[]> signature) => throw new NotSupportedException("A pointer to a function.");

    public byte[] GetGenericInstantiation(byte[] genericType, ImmutableArray<byte[]> typeArguments) => InstanceOf(genericType, typeArguments);

    public byte[] GetGenericMethodParameter(object? genericContext, int index) => [MethodParameter, .. Number(index)];

    public byte[] GetGenericTypeParameter(object? genericContext, int index) => [TypeParameter, .. Number(index)];

    public byte[] GetModifiedType(byte[] modifier, byte[] unmodifiedType, bool isRequired) =>
        [isRequired ? Required : Optional, .. modifier[1..], .. unmodifiedType];

    public byte[] GetPinnedType(byte[] elementType) => [Pinned, .. elementType];

    public byte[] GetPointerType(byte[] elementType) => [Pointer, .. elementType];

    public byte[] GetPrimitiveType(PrimitiveTypeCode typeCode) => [(byte)typeCode];

    public byte[] GetSZArrayType(byte[] elementType) => ArrayOf(elementType);

    public byte[] GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) =>
        Named(references.To(reader, handle), IsValue(reader, reader.GetTypeDefinition(handle)));

    public byte[] GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) =>
        Named(references.To(reader, handle), rawTypeKind == ValueType);

    public byte[] GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
        reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

    // Bounds of arrays are 0 wherever one is met here, and 0 is written alike with a sign and without.
    private static byte[] Counted(ImmutableArray<int> numbers) => [.. Number(numbers.Length), .. numbers.SelectMany(Number)];
}

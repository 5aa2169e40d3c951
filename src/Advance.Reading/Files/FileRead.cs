namespace Advance.Reading.Files;

/// <summary>What came of reading a file.</summary>
/// <param name="Bytes">The whole file; empty where there is a fault.</param>
/// <param name="Fault">Why it could not be read.</param>
public readonly record struct FileRead(ReadOnlyMemory<byte> Bytes, FileFault Fault)
{
    /// <summary>A file that was read.</summary>
    public static FileRead Of(ReadOnlyMemory<byte> bytes) => new(bytes, FileFault.None);

    /// <summary>A file that was not read.</summary>
    public static FileRead Not(FileFault why) => new(default, why);
}

namespace Advance.Tests.Cli;

/// <summary>A folder of a test's own, gone when the test is over.</summary>
internal sealed class Scratch : IDisposable
{
    public Scratch() => Folder = Directory.CreateTempSubdirectory("advance-").FullName;

    public string Folder { get; }

    public string Path(params string[] parts) => System.IO.Path.Combine([Folder, .. parts]);

    public string Write(string name, string text)
    {
        var path = Path(name.Split('/'));
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

using System.Text;
using Advance.Cli.Output;

namespace Advance.Tests.Cli;

public sealed class FolderWriterTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Where_the_last_file_cannot_be_put_in_its_place_the_first_one_is_as_it_was()
    {
        scratch.Write("out/a.txt", "old");
        Directory.CreateDirectory(scratch.Path("out", "b.txt"));
        Assert.NotNull(FolderWriter.Write(scratch.Path("out"), [File("a.txt", "new"), File("b.txt", "new"), File("c.txt", "new")]));
        Assert.Equal("old", System.IO.File.ReadAllText(scratch.Path("out", "a.txt")));
        Assert.Equal(["a.txt", "b.txt"], Names(scratch.Path("out")));
    }

    [Fact]
    public void A_new_folder_stands_whole_or_not_at_all()
    {
        Assert.NotNull(FolderWriter.Write(scratch.Path("new"), [File("a.txt", "1"), File("a.txt/b.txt", "2")]));
        Assert.Empty(Names(scratch.Folder));
        Assert.Null(FolderWriter.Write(scratch.Path("new"), [File("a.txt", "1"), File("below/b.txt", "2")]));
        Assert.Equal("2", System.IO.File.ReadAllText(scratch.Path("new", "below", "b.txt")));
        Assert.Equal(["new"], Names(scratch.Folder));
    }

    [Fact]
    public void What_was_there_and_is_not_written_stays()
    {
        scratch.Write("out/mine.txt", "mine");
        Assert.Null(FolderWriter.Write(scratch.Path("out"), [File("a.txt", "new")]));
        Assert.Equal(["a.txt", "mine.txt"], Names(scratch.Path("out")));
    }

    private static (string, ReadOnlyMemory<byte>) File(string name, string text) => (name, Encoding.UTF8.GetBytes(text));

    private static IEnumerable<string?> Names(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}

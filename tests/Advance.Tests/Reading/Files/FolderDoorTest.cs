using Advance.Reading.Files;

namespace Advance.Tests.Reading.Files;

public sealed class FolderDoorTest : IDisposable
{
    private readonly string outside = Directory.CreateTempSubdirectory("advance-door").FullName;
    private readonly string root;
    private readonly FolderDoor door;

    public FolderDoorTest()
    {
        root = Path.Combine(outside, "tree");
        Directory.CreateDirectory(Path.Combine(root, "stock"));
        File.WriteAllText(Path.Combine(root, "gig.yaml"), "gig: x\n");
        File.WriteAllText(Path.Combine(root, "stock", "a.yaml"), "kinds:\n");
        File.WriteAllText(Path.Combine(outside, "secret.yaml"), "key: 1234\n");
        door = new FolderDoor(root);
    }

    public void Dispose() => Directory.Delete(outside, recursive: true);

    [Fact]
    public void Reads_and_lists_what_is_inside()
    {
        Assert.Equal("gig: x\n"u8.ToArray(), door.Read("gig.yaml", 100).Bytes.ToArray());
        Assert.Equal(["a.yaml"], door.List("stock"));
        Assert.Equal(["gig.yaml"], door.List(""));
        Assert.True(door.Exists("stock/a.yaml"));
        Assert.False(door.Exists("stock"));
    }

    [Fact]
    public void Says_why_it_does_not_read()
    {
        Assert.Equal(FileFault.Missing, door.Read("gone.yaml", 100).Fault);
        Assert.Equal(FileFault.Folder, door.Read("stock", 100).Fault);
        Assert.Equal(FileFault.TooLarge, door.Read("gig.yaml", 6).Fault);
        Assert.Equal(FileFault.None, door.Read("gig.yaml", 7).Fault);
        Assert.Null(door.List("gone"));
    }

    [Fact]
    public void Stays_inside_whatever_the_path()
    {
        Assert.Equal(FileFault.Outside, door.Read("../secret.yaml", 100).Fault);
        Assert.Equal(FileFault.Outside, door.Read(Path.Combine(outside, "secret.yaml"), 100).Fault);
        Assert.Equal(FileFault.Outside, door.Read("../tree-of-another/x", 100).Fault);
        Assert.Null(door.List(".."));
        Assert.False(door.Exists("../secret.yaml"));
    }

    [Fact]
    public void Stays_inside_through_links()
    {
        File.CreateSymbolicLink(Path.Combine(root, "file-link.yaml"), Path.Combine(outside, "secret.yaml"));
        Directory.CreateSymbolicLink(Path.Combine(root, "folder-link"), outside);
        Directory.CreateSymbolicLink(Path.Combine(root, "inner-link"), Path.Combine(root, "stock"));
        File.CreateSymbolicLink(Path.Combine(root, "loop"), Path.Combine(root, "loop"));

        Assert.Equal(FileFault.Outside, door.Read("file-link.yaml", 100).Fault);
        Assert.Equal(FileFault.Outside, door.Read("folder-link/secret.yaml", 100).Fault);
        Assert.Null(door.List("folder-link"));
        Assert.False(door.Exists("folder-link/secret.yaml"));
        Assert.Equal(FileFault.None, door.Read("inner-link/a.yaml", 100).Fault);
        Assert.NotEqual(FileFault.None, door.Read("loop", 100).Fault);
    }

    [Fact]
    public void May_itself_stand_behind_a_link()
    {
        var link = Path.Combine(outside, "link-to-tree");
        Directory.CreateSymbolicLink(link, root);

        Assert.Equal(FileFault.None, new FolderDoor(link).Read("gig.yaml", 100).Fault);
    }
}

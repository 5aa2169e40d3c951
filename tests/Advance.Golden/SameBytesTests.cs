using System.Security.Cryptography;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;
using Advance.Tests;

namespace Advance.Golden;

/// <summary>The same input gives the same bytes, whoever runs it, where and when.</summary>
public sealed class SameBytesTests
{
    [Fact]
    public void Two_processes_in_other_surroundings_write_the_same_package()
    {
        var folder = Directory.CreateTempSubdirectory("advance-").FullName;
        try
        {
            var here = Run(Path.Combine(folder, "a"), Repository.Root, [("LANG", "C"), ("TZ", "UTC")]);
            var there = Run(Path.Combine(folder, "b"), "/", [("LANG", "tr_TR.UTF-8"), ("LC_ALL", "de_DE.UTF-8"), ("TZ", "Pacific/Kiritimati"), ("HOME", folder), ("TMPDIR", folder)]);
            Assert.Equal(5, here.Count);
            Assert.Equal(here, there);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_folder_that_is_listed_backwards_makes_no_difference()
    {
        var root = Repository.Path("sample-gigs");
        Assert.Equal(Hashes(new FolderDoor(root)), Hashes(new BackwardsDoor(new FolderDoor(root))));
    }

    private static Dictionary<string, string> Hashes(IFileDoor files)
    {
        var read = BriefReader.Read(files, "harvest-supper/gig.yaml");
        var package = PackageBuilder.Build(Planner.Plan(read.Brief!), PackageRequest.Everything, CompanyFolder.None);
        return package.Files.ToDictionary(file => file.Name, file => Convert.ToHexString(SHA256.HashData(file.Bytes.Span)));
    }

    private static SortedDictionary<string, string> Run(string output, string folder, (string Name, string Value)[] surroundings)
    {
        var run = (ProgramRun.Published ?? ProgramRun.Built) with { Folder = folder, Surroundings = surroundings };
        var (exitCode, said) = run.Say("build", Repository.Path("sample-gigs", "harvest-supper"), "--out", output);
        Assert.True(exitCode == 0, said);
        return ProgramRun.Hashes(output);
    }

    private sealed class BackwardsDoor(IFileDoor files) : IFileDoor
    {
        public FileRead Read(string path, int limit) => files.Read(path, limit);

        public IReadOnlyList<string>? List(string folder) => files.List(folder)?.OrderDescending(StringComparer.Ordinal).ToList();

        public bool Exists(string path) => files.Exists(path);
    }
}

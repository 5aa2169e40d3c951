using System.Text;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;
using Advance.Tests;

namespace Advance.Browser;

/// <summary>Offline pages of gigs, built once.</summary>
internal static class Pages
{
    public const int Phone = 390;
    public const int Desk = 1280;

    private static readonly Lazy<string> Built = new(() => Build(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml"));

    public static string Sample => Built.Value;

    public static string Build(IFileDoor door, string gig)
    {
        var read = BriefReader.Read(door, gig);
        var package = PackageBuilder.Build(Planner.Plan(read.Brief!), PackageRequest.Everything with { Formats = ["html"] }, CompanyFolder.None);
        return Encoding.UTF8.GetString(package.Files.Single().Bytes.Span);
    }
}

using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Advance.Tests.Conventions;

/// <summary>The table of rooms in DEVELOPERS.md against the real references and doors.</summary>
public sealed partial class RoomConventions
{
    public static TheoryData<string, string, string> Rooms
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (Match row in RoomRow().Matches(File.ReadAllText(Repository.Path("DEVELOPERS.md"))))
            {
                data.Add(row.Groups["room"].Value, row.Groups["door"].Value.Trim(), row.Groups["refs"].Value.Trim());
            }

            return data;
        }
    }

    [Fact]
    public void Every_project_is_in_the_table() =>
        Assert.Equal(
            Directory.GetDirectories(Repository.Path("src")).Select(Path.GetFileName).Order(StringComparer.Ordinal),
            Rooms.Select(row => (string)row[0]).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_references_only_what_the_table_allows(string room, string door, string references)
    {
        _ = door;
        var project = XDocument.Load(Repository.Path("src", room, room + ".csproj"));
        var real = project.Descendants("ProjectReference").Select(element => Path.GetFileNameWithoutExtension(element.Attribute("Include")!.Value));
        var allowed = references.Split(',', StringSplitOptions.TrimEntries).Where(name => name != "none").Select(name => $"Advance.{name}");
        Assert.Equal(allowed.Order(StringComparer.Ordinal), real.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_door_is_where_the_table_says(string room, string door, string references)
    {
        _ = references;
        if (door is "" or "none")
        {
            return;
        }

        var (type, method) = (door.Trim('`').Split('.')[0], door.Trim('`').Split('.')[1]);
        var assembly = System.Reflection.Assembly.Load(room);
        Assert.Contains(assembly.GetExportedTypes(), found => found.Name == type && found.GetMethod(method) is not null);
    }

    [GeneratedRegex(@"^\| `(?<room>Advance\.\w+)` \|[^|]*\|[^|]*\|(?<door>[^|]*)\|(?<refs>[^|]*)\|", RegexOptions.Multiline)]
    private static partial Regex RoomRow();
}

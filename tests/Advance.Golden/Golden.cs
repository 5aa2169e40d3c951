using System.Text;
using Advance.Tests;

namespace Advance.Golden;

/// <summary>
/// Compares what a room made with a file that somebody has read and accepted. With <c>ADVANCE_ACCEPT=1</c> the file is written instead, to be
/// read as a change.
/// </summary>
internal static class Golden
{
    private static readonly bool Accepts = Environment.GetEnvironmentVariable("ADVANCE_ACCEPT") == "1";

    /// <summary>Fails where the text differs from the accepted one, naming the first line that does.</summary>
    public static void Matches(string gig, string room, string actual)
    {
        var file = Repository.Path("tests", "Advance.Golden", gig, room);
        if (Accepts)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, actual, new UTF8Encoding(false));
        }

        Assert.True(File.Exists(file), $"{file} is missing: read what ADVANCE_ACCEPT=1 writes, and keep it.");
        var expected = File.ReadAllLines(file);
        var lines = actual.Split('\n');
        for (var line = 0; line < Math.Max(expected.Length, lines.Length - 1); line++)
        {
            Assert.True(
                line < expected.Length && line < lines.Length && expected[line] == lines[line],
                $"{gig}/{room}, line {line + 1}:\n  was  {(line < expected.Length ? expected[line] : "(end)")}\n  now  {(line < lines.Length ? lines[line] : "(end)")}");
        }
    }
}

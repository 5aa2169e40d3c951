using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>Reads the structure of a YAML file.</summary>
internal static class YamlFile
{
    /// <summary>The file's tree, as far as it can be made out.</summary>
    /// <param name="source">The file.</param>
    /// <param name="findings">Takes every fault of the structure; a value with one becomes a <see cref="SpoiltNode"/>.</param>
    /// <returns>Null where the file has to be given up, or holds nothing; a finding says which.</returns>
    public static Node? Read(TextSource source, ICollection<Finding> findings)
    {
        var mending = new Mending(source, findings);
        new LineScan(source, mending).Run();
        if (mending.IsHopeless)
        {
            return null;
        }

        try
        {
            var root = new TreeBuilder(source, mending.Text, mending.Spoilt, findings).Build();
            if (root is null)
            {
                findings.Add(FileFindings.Empty(source.File));
            }

            return root;
        }
        catch (SyntaxFault fault)
        {
            findings.Add(fault.Finding);
            return null;
        }
    }
}

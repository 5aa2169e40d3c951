using Advance.Domain.Facts;

namespace Advance.Reading.Files;

/// <summary>A file that was read, kept so that a finding can quote the line it points at.</summary>
public abstract class Source(string file)
{
    /// <summary>The file, relative to the folder that holds the gig's tree.</summary>
    public string File { get; } = file;

    /// <summary>The line that a mark stands on, and where its caret goes; null where there is no such line.</summary>
    public abstract Quote? Quote(Mark mark);
}

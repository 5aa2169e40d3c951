using Advance.Domain.Findings;

namespace Advance.Reading.Yaml;

/// <summary>A file cannot be read any further. It never leaves this folder: the finding does.</summary>
internal sealed class SyntaxFault(Finding finding) : Exception
{
    public Finding Finding { get; } = finding;
}

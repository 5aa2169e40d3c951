using Advance.Domain.Facts;

namespace Advance.Reading.Yaml;

/// <summary>A value that could not be made out and about which a finding has been made: whoever reads it says nothing more.</summary>
internal sealed class SpoiltNode(Mark at) : Node(at, 1)
{
    public override string Kind => "something unreadable";
}

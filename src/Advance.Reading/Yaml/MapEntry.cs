namespace Advance.Reading.Yaml;

/// <summary>A key and its value.</summary>
internal readonly record struct MapEntry(ScalarNode Key, Node Value);

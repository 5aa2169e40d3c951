using Advance.Reading.Phrases;

namespace Advance.Reading.Shapes;

/// <summary>A shape that is one phrase, so that a heading may give its unit and the reference may list its examples.</summary>
internal interface IPhrased
{
    /// <summary>The phrase; null where what may be open is none.</summary>
    Phrase? Phrase { get; }
}

using System.Text;

namespace Advance.Paper.Setting;

/// <summary>The fonts of one printing, in the order in which they are asked for a letter.</summary>
internal sealed class FaceSet
{
    private readonly Face[] regular;
    private readonly Face[] bold;

    private FaceSet(Face[] regular, Face[] bold)
    {
        this.regular = regular;
        this.bold = bold;
    }

    public static FaceSet Of(IReadOnlyList<FontFile> fallbacks, Faults faults)
    {
        List<Face> regulars = [BuiltIn.Regular];
        List<Face> bolds = [BuiltIn.Bold];
        foreach (var file in fallbacks)
        {
            if (Face.Open(file.Name, file.Bytes.Span) is { } face && face.CanDraw())
            {
                (file.IsBold ? bolds : regulars).Add(face);
            }
            else
            {
                faults.Add(FaultKind.UnreadableFont, $"The font {file.Name} cannot be read and is left out.");
            }
        }

        // A letter in the wrong weight reads better than a box.
        return new FaceSet([.. regulars, .. bolds[1..]], [.. bolds, .. regulars[1..]]);
    }

    public Face Primary(bool strong) => strong ? bold[0] : regular[0];

    /// <summary>The first font that has the letter; null when none has it.</summary>
    public Face? For(Rune rune, bool strong)
    {
        foreach (var face in strong ? bold : regular)
        {
            if (face.Covers(rune.Value))
            {
                return face;
            }
        }

        return null;
    }
}

using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;

namespace Advance.Sheets.Markup.Building;

/// <summary>Builds cautions and remarks.</summary>
internal static class Asides
{
    public static Block Make(Element element, MarkupFaults faults)
    {
        var sentences = element.Elements.Select(sentence => Line.Of(sentence, faults)).ToList();
        var (least, most, which) = IsCaution(element)
            ? (2, 3, "what can happen, what to do, and who decides")
            : (1, 2, "what was found, and its source and cure");
        if (sentences.Count < least || sentences.Count > most)
        {
            faults.Add(element.At, $"`{element.Form.Title}` holds {least} or {most} `p`: {which}.");
        }

        return element.Form.Class switch
        {
            "danger" => MakeCaution(Signal.Danger, sentences),
            "warning" => MakeCaution(Signal.Warning, sentences),
            "caution" => MakeCaution(Signal.Caution, sentences),
            "stop" => MakeRemark(RemarkWeight.Stop, sentences),
            "concern" => MakeRemark(RemarkWeight.Concern, sentences),
            _ => MakeRemark(RemarkWeight.Note, sentences),
        };
    }

    private static bool IsCaution(Element element) => element.Form.Gives == typeof(Caution);

    private static Caution MakeCaution(Signal signal, List<IReadOnlyList<Inline>> sentences) =>
        new(signal, At(sentences, 0), At(sentences, 1), At(sentences, 2));

    private static Remark MakeRemark(RemarkWeight weight, List<IReadOnlyList<Inline>> sentences) =>
        new(weight, At(sentences, 0)) { Detail = At(sentences, 1) };

    private static IReadOnlyList<Inline> At(List<IReadOnlyList<Inline>> sentences, int index) =>
        index < sentences.Count ? sentences[index] : [];
}

using Advance.Reading;

namespace Advance.Tests.Reading;

/// <summary>Every fault of a long night in one gig: each is found, once, at its place.</summary>
public sealed class TwentyFaultsTest
{
    private const string Gig = """
        gig: A long night
        client: Barn & Co «#2»
        day: Sat «12/09/2026»
        revision: «@»home
        «issud»: Tue 1 Sep 2026
        people: |
          name | does  | call
          Ada  | sound | «7:30 pm»
          Bo   | stage | 14:00 | «late»
        schedule: |
          time  | what          | who
          14:00 | In            | all
          15:00 |«»
        stage:
          size: «8 x 5»
          height: «0,6» m above floor
          downstage-edge: 6 «metres» US of door
          steps: {item: step-2, «left»}
        sound:
          consoles:
            FOH: {item: desk, place: DS 16 m, to: a«:» b}
          stacks:
            Main: {sides: «both», from-floor-up: [sub]}
            «Main»: {from-floor-up: [sub, 0 x top]}
        acts:
          Duo:
            people: «five»
            sets: [20:00 for «45»]
            inputs: duo.csv
          Trio:
            brings: «[»drum kit, keys
            mixes: «>»
              mix | for
              1 | Ada
        crew: {hands: 8 TBC chief by «Friday»}
        extras:
          - item: «!»tagged
        trucks: «[»van]
        accept: «nothing»
        measured: «3 t» # «TBC» on site
        """;

    private const string Csv = """
        ch,source,mic-or-di,place
        1,Kick,kick-mic,SR «1.2»
        2,«»,snare-mic,«dsr»
        «0»,Hat,"2 x pencil, one spare",USC
        """;

    [Fact]
    public void Each_is_found_once_at_its_place()
    {
        var gig = MarkedText.Of(Gig);
        var csv = MarkedText.Of(Csv, "duo.csv");

        var reading = BriefReader.Read(MemoryDoor.Of(("gig.yaml", gig.Text), ("duo.csv", csv.Text)), "gig.yaml");

        var expected = gig.Marks.Concat(csv.Marks).Order().Select(mark => (mark.File, mark.Line, mark.Column));
        Assert.Equal(expected, reading.Findings.Select(finding => (finding.At.File, finding.At.Line, finding.At.Column)).Order());
        Assert.True(reading.Findings.Select(finding => finding.Rule).Distinct().Count() >= 20, "kinds");
        Assert.All(reading.Findings, finding => Assert.NotNull(reading.Sources.Quote(finding.At)));
    }
}

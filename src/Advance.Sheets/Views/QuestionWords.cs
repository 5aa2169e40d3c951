using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Turns the path of keys of an open question into a question that a venue or an act understands.</summary>
internal static class QuestionWords
{
    private const string Between = " / ";

    // What is asked where a key of that name is open; of any other, what it is.
    private static readonly Dictionary<string, string> Asks = new(StringComparer.Ordinal)
    {
        ["from"] = "who brings it?",
        ["brings"] = "what do they bring?",
        ["who"] = "who does it, or signs it?",
        ["driver"] = "who drives?",
        ["place"] = "where does it stand?",
        ["parks"] = "where may it park?",
        ["downstage-edge"] = "where is the downstage edge?",
        ["earthing"] = "how is it earthed: TN-S, TN-C-S or TT?",
        ["residual-protection"] = "which residual-current device protects it, how many mA?",
        ["neutral-earth-link"] = "where are neutral and earth joined, the one place?",
        ["loop-impedance"] = "what is the loop impedance at its outlet, measured?",
        ["fault-current"] = "how much may a fault draw there, in kA?",
        ["electrode"] = "how many ohms has its earth electrode, measured?",
        ["device"] = "which protective device is it, and of which curve?",
        ["breaks"] = "how many kA can its device break?",
        ["residual-type"] = "of which type is its residual-current device: AC, A, F or B?",
        ["residual-delay"] = "how long does its residual-current device wait, in ms?",
        ["outdoor"] = "does what hangs on it stand in the open?",
        ["isolated-by"] = "who switches it off, and how?",
        ["rules"] = "whose wiring rules hold, IEC or NEC?",
        ["drop-used"] = "how many per cent of the voltage are lost before it?",
        ["earths-joined"] = "are their earths one, and how many ohms lie between them, measured?",
        ["to"] = "where does its bonding conductor go?",
        ["in-use"] = "how much does it draw?",
        ["drum"] = "how is it wound on its drum?",
        ["how"] = "how do leads lie in it?",
        ["air"] = "how hot does the air get there?",
        ["cover-factor"] = "how much does covered cable still carry there?",
        ["engine"] = "how many kW does the engine give?",
        ["derating"] = "how much of it is left in this heat and height?",
        ["step"] = "how much may it take at once?",
        ["sustained"] = "how many amperes does it hold into a fault, and for how long?",
        ["leading"] = "how much leading load does it bear?",
        ["unbalance"] = "how uneven may its lines be?",
        ["tank"] = "how many litres does its tank hold?",
        ["fuel"] = "how much does it burn at which load?",
        ["fuel-at"] = "how full does it come?",
        ["noise"] = "how loud is it at 7 m?",
        ["second-set"] = "is there a second set, and how soon is it there?",
        ["rating"] = "how many amperes does it give?",
        ["supply"] = "which voltage, how many phases?",
        ["connector"] = "which connector does it have?",
        ["behind"] = "what does it run through?",
        ["shared-with"] = "who else draws from it?",
        ["hospital"] = "which hospital is the nearest that takes emergencies?",
        ["first-aid"] = "where is first aid?",
        ["muster"] = "where does everybody meet after an alarm?",
        ["key"] = "who holds the key, and from when?",
        ["key-for-load-out"] = "who holds the key for the load-out?",
        ["access"] = "how does it get in from the road: doors, corners, steps, how wide and how high?",
        ["roof-points"] = "which points in the roof may we use, and what may each carry?",
        ["limit"] = "how much may it carry?",
        ["phone"] = "what is the phone number?",
        ["day"] = "on which day is it?",
        ["date"] = "on which day is it?",
        ["height"] = "how high is it?",
        ["size"] = "how wide and how deep is it?",
        ["wide"] = "how wide is it, clear?",
        ["high"] = "how high is it, clear?",
        ["long"] = "how far is it?",
        ["call"] = "when is the call?",
        ["time"] = "when is it?",
        ["sets"] = "when do they play, and for how long?",
        ["mic or DI"] = "microphone or DI, and which?",
        ["stand"] = "which stand?",
        ["draws"] = "how much current does it draw?",
        ["item"] = "which one is it?",
        ["count"] = "how many?",
        ["hands"] = "how many hands come?",
        ["meals"] = "what is there to eat, and when?",
        ["with"] = "wedge or in-ears?",
        ["wants"] = "what do they want to hear?",
        ["people"] = "how many are on stage?",
        ["haze"] = "may there be haze, and who switches the detectors off?",
        ["sound-limit"] = "how loud may it be, and who measures?",
        ["music-off"] = "when must the music be off?",
        ["empty"] = "when must everybody be out?",
    };

    // What holds several of one thing: how one of them is called. Nothing where its name says enough.
    private static readonly Dictionary<string, string> Ones = new(StringComparer.Ordinal)
    {
        ["acts"] = "",
        ["schedule"] = "",
        ["people"] = "",
        ["contacts"] = "",
        ["trucks"] = "",
        ["backline"] = "",
        ["things"] = "",
        ["consoles"] = "",
        ["stage-boxes"] = "",
        ["processors"] = "",
        ["stacks"] = "",
        ["distributions"] = "",
        ["access"] = "way in,",
        ["services"] = "service",
        ["inputs"] = "input",
        ["mixes"] = "mix",
        ["circuits"] = "circuit of",
        ["fixtures"] = "fixture",
        ["positions"] = "position",
        ["roof-points"] = "roof point",
        ["keep-clear"] = "to be kept clear,",
        ["extras"] = "",
        ["days"] = "day",
        ["always-live"] = "input",
        ["bonds"] = "bond of",
        ["shared-with"] = "shared with",
    };

    // Chapters of a file: their keys stand alone.
    private static readonly string[] Chapters = ["safety", "welfare", "rules", "sound", "power", "lighting", "hall", "crew", "generator"];

    /// <summary><c>The Threshers, input 12 (Fiddle): who brings it?</c></summary>
    public static string Of(Doubt doubt, Plan plan) => Of(doubt, Known(doubt, plan));

    /// <summary><c>The Threshers, input 12: who brings it?</c></summary>
    public static string Of(Doubt doubt) => Of(doubt, known: "");

    private static string Of(Doubt doubt, string known)
    {
        var path = doubt.Subject.Split(Between);
        var about = About(path[..^1]);
        if (known.Length > 0)
        {
            about = about.Length > 0 ? $"{about} ({known})" : known;
        }

        var ask = Asks.GetValueOrDefault(path[^1]) ?? $"what is the {path[^1].Replace('-', ' ')}?";
        return about.Length > 0 ? $"{DaySheetViews.Capital(about)}: {ask}" : DaySheetViews.Capital(ask);
    }

    private static string About(string[] path)
    {
        var parts = new List<string>();
        for (var index = 0; index < path.Length; index++)
        {
            if (Ones.TryGetValue(path[index], out var one) && index + 1 < path.Length)
            {
                index++;
                parts.Add($"{one} {path[index]}".Trim());
            }
            else if (!Chapters.Contains(path[index], StringComparer.Ordinal))
            {
                parts.Add(path[index].Replace('-', ' '));
            }
        }

        return string.Join(", ", parts);
    }

    // What stands there, where the path has only its number or its time.
    private static string Known(Doubt doubt, Plan plan)
    {
        var row = plan.Brief.Gig.Schedule.FirstOrDefault(row => row.Who?.Doubt == doubt || row.Time.Doubt == doubt);
        var line = plan.Patch.Lines.FirstOrDefault(line => line.Row.From?.Doubt == doubt || line.Row.Device?.Doubt == doubt);
        return row?.What ?? line?.Row.Source ?? "";
    }
}

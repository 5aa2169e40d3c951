using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What there is to do until lines can be checked, and what must be done before what: a deck before anything stands on it, a test
/// and a signature before anything is switched on.</summary>
internal sealed class LoadIn
{
    private const string Electrician = "electrician";
    private const int BoxesOfAStack = 3;
    private const int BoxesOfAHang = 10;

    private static readonly Address Root = Address.Of("crew");

    private readonly Brief brief;
    private readonly Extents extents;
    private readonly SoundPlan sound;
    private readonly DayRows day;
    private readonly RiggingTasks rigging;
    private readonly List<TaskDraft> tasks = [];

    private LoadIn(Brief brief, Backbone backbone, SoundPlan sound, PatchPlan patch)
    {
        this.brief = brief;
        extents = new Extents(backbone.Pieces, patch, brief.Company.Policies.Tasks);
        this.sound = sound;
        day = new DayRows(brief.Gig);
        rigging = new RiggingTasks(brief);
    }

    private TaskTimes Times => brief.Company.Policies.Tasks;

    /// <summary>Every task, the most urgent first.</summary>
    public static IReadOnlyList<TaskDraft> Tasks(Brief brief, Backbone backbone, SoundPlan sound, PatchPlan patch, StockPlan pull)
    {
        var loadIn = new LoadIn(brief, backbone, sound, patch);
        var first = loadIn.Unload(pull);
        var bolted = loadIn.rigging.Bolt(first, loadIn.Add);
        var deck = loadIn.Deck(first);
        var powered = loadIn.Power(deck);
        loadIn.Stacks(deck);
        loadIn.Hangs(deck);
        loadIn.Inputs(deck);
        loadIn.Lights(deck, bolted, powered);
        loadIn.Desks(first);
        loadIn.Check(powered);
        return loadIn.tasks;
    }

    private IReadOnlyList<Address> Unload(StockPlan pull)
    {
        if (brief.Gig.Trucks.Count == 0)
        {
            return [];
        }

        var parts = brief.Gig.Trucks.Select(truck => Unloading.OfVehicle(truck, brief.Stock, Times)).ToList();
        if (Unloading.Push(brief.Venue, pull.Units, Times) is { } push)
        {
            parts.Add(push);
        }

        var hands = brief.Gig.Trucks.Max(truck => Unloading.HandsFor(truck, brief.Stock, Times));
        return Add(new TaskDraft(Root / "unload", Job.Unload, "Unload and bring in", "from the vehicle to the stage", hands, "", Labour.Together(parts), [])
        {
            Danger = "Backs and feet: lift by the handles, and one calls the lift.",
            Undo = "Carry out and load",
        });
    }

    private IReadOnlyList<Address> Deck(IReadOnlyList<Address> after)
    {
        var decks = extents.Of(Role.Deck);
        return decks.Value == 0 ? after : Add(new TaskDraft(
            Root / "deck", Job.Deck, $"Build the deck, {decks.Value} pieces", "stage", Times.Deck.Hands, "", Labour.For(decks, "deck", Times.Deck), after)
        {
            Danger = "A deck tips until its neighbours are clamped: nobody stands on it before.",
            Undo = $"Strike the deck, {decks.Value} pieces",
        });
    }

    // Lay, test dead, have it signed, test live: only then is anything switched on.
    private IReadOnlyList<Address> Power(IReadOnlyList<Address> after)
    {
        var distributions = extents.Of(Role.Distribution);
        var laid = distributions.Value == 0 ? after : Add(new TaskDraft(
            Root / "mains", Job.Mains, "Lay feeders and set distributions", "stage", Times.Feeder.Hands, "", extents.Feeders(distributions), after)
        {
            Danger = "Nothing is plugged into a service before the test.",
            Undo = "Take up feeders and distributions",
        });
        var signer = Signer();
        var dead = distributions.Value == 0 ? laid : Add(Test("dead-test", "Test every circuit dead", "dead-test", Times.DeadTest, laid, signer));
        var signed = Hold(dead);
        return distributions.Value == 0 ? signed : Add(Test("live-test", "Test every circuit live", "live-test", Times.LiveTest, signed, signer));
    }

    private TaskDraft Test(string key, string what, string policy, Work work, IReadOnlyList<Address> after, (string? Name, Doubts RestsOn) signer) =>
        new(Root / key, Job.Test, what, "stage", work.Hands, Electrician, Labour.For(extents.Circuits, policy, work), after)
        {
            By = signer.Name,
            RestsOn = signer.RestsOn,
            Danger = "Electric shock: only who may test opens or plugs anything.",
        };

    // A hold that speaks of power waits for the dead test; any other stands at its time.
    private IReadOnlyList<Address> Hold(IReadOnlyList<Address> dead)
    {
        var power = dead;
        foreach (var row in day.Holds)
        {
            var isPower = row.What.Contains("power", StringComparison.OrdinalIgnoreCase);
            var who = row.Who is { } given && given.Is(out var name) ? name : "";
            var held = Add(new TaskDraft(Root / "hold" / row.What, Job.Test, row.What, row.Where, 0, "", Labour.None, isPower ? dead : [])
            {
                IsHold = true,
                By = who,
                NotBefore = row.Time.IsKnown ? row.Time.Value : null,
                RestsOn = Doubts.Of(row.Time.Doubt).With(Doubts.Of(row.Who?.Doubt)),
                Undo = isPower ? "power off and locked off before a lead is pulled; work lights stay on" : "",
            });
            power = isPower ? held : power;
        }

        return power;
    }

    private void Stacks(IReadOnlyList<Address> after)
    {
        foreach (var stack in sound.Stacks)
        {
            var work = Labour.ForPart(Figure.Count(stack.Boxes.Count), BoxesOfAStack, "stack", Times.Stack);
            Add(new TaskDraft(Root / "stack" / stack.Name, Job.Stacks, $"Build {stack.Name}, {Boxes(stack)}", "stage", Times.Stack.Hands, "", work, after)
            {
                Lifted = [.. stack.Boxes.Select(box => box.Piece.Item)],
                Danger = "A box falls until it is pinned: nobody stands within its height.",
                Undo = $"Take down {stack.Name}, {Boxes(stack)}",
            });
        }
    }

    // The rigger leads and is one more than the hands that lift.
    private void Hangs(IReadOnlyList<Address> after)
    {
        foreach (var hang in sound.Hangs)
        {
            var work = Labour.ForPart(Figure.Count(hang.Boxes.Count), BoxesOfAHang, "hang", Times.Hang);
            Add(new TaskDraft(Root / "hang" / hang.Name, Job.Stacks, $"Fly {hang.Name}, {Boxes(hang)}", "stage", Times.Hang.Hands, "rigger", work, after)
            {
                Lifted = [.. hang.Boxes.Select(box => box.Piece.Item)],
                Danger = "Nobody under it while it moves; it is not let go before every pin is seen.",
                Undo = $"Bring down {hang.Name}, {Boxes(hang)}",
            });
        }
    }

    private static string Boxes(StackPlan stack) => stack.Boxes.Count == 1 ? "1 box" : $"{stack.Boxes.Count} boxes";

    private void Inputs(IReadOnlyList<Address> after)
    {
        if (extents.Lines.Value > 0)
        {
            var hands = Times.Input.Hands * brief.Company.Policies.Changeover.PatchHands;
            Add(new TaskDraft(Root / "inputs", Job.Inputs, $"Set and patch {extents.Lines.Value} lines", "stage", hands, "stage", Labour.For(extents.Lines, "input", Times.Input), after)
            {
                Undo = $"Clear {extents.Lines.Value} lines: microphones, stands, leads",
            });
        }
    }

    // What hangs on a truss is hung on it at waist height, and then it flies.
    private void Lights(IReadOnlyList<Address> after, IReadOnlyDictionary<string, Address> bolted, IReadOnlyList<Address> powered)
    {
        var carried = new Dictionary<string, List<Address>>(StringComparer.OrdinalIgnoreCase);
        var hung = new List<Address>();
        foreach (var position in brief.Gig.Lighting.Fixtures.GroupBy(row => row.Position, StringComparer.Ordinal))
        {
            var truss = rigging.TrussOf(position.Key);
            var onIt = Hang(position.Key, [.. position], truss is not null && bolted.TryGetValue(truss, out var made) ? [made] : after);
            if (truss is not null)
            {
                carried[truss] = [.. carried.GetValueOrDefault(truss) ?? [], .. onIt];
            }

            hung.AddRange(onIt);
        }

        hung.AddRange(rigging.Fly(bolted, carried, powered, Add));

        if (brief.Gig.Lighting.Fixtures.Count > 0)
        {
            var all = Labour.For(Extents.OfFixtures(brief.Gig.Lighting.Fixtures), "focus", Times.Focus);
            Add(new TaskDraft(Root / "focus", Job.Lights, "Light up and focus", "stage", Times.Focus.Hands, "lights", all, [.. hung, .. powered]));
        }
    }

    private IReadOnlyList<Address> Hang(string position, IReadOnlyList<FixtureRow> rows, IReadOnlyList<Address> after)
    {
        var fixtures = Extents.OfFixtures(rows);
        var work = Labour.Together(
        [
            Labour.For(fixtures, "fixture", Times.Fixture),
            Labour.For(fixtures, "fixture-cable", Times.FixtureCable),
            Labour.For(fixtures, "fixture-address", Times.FixtureAddress),
        ]);
        return Add(new TaskDraft(
            Root / "lights" / position, Job.Lights, $"Hang and cable {fixtures.Value} fixtures on {position}", "stage", Times.Fixture.Hands, "lights", work, after)
        {
            Lifted = [.. rows.Select(row => row.Item.Or(""))],
            Danger = "A lamp falls: its safety bond is on before the stand goes up.",
            Undo = $"Take down {fixtures.Value} fixtures from {position}",
        });
    }

    private void Desks(IReadOnlyList<Address> after)
    {
        foreach (var console in brief.Gig.Sound.Consoles)
        {
            Add(new TaskDraft(
                Root / "desk" / console.Name, Job.Desks, $"Set up {console.Name}", console.Name, Times.Desk.Hands, "sound", Labour.For(Figure.Count(1), "desk", Times.Desk), after)
            {
                Undo = $"Pack {console.Name}",
            });
        }
    }

    private void Check(IReadOnlyList<Address> powered)
    {
        var ready = tasks.Where(task => task.Job is Job.Stacks or Job.Desks or Job.Inputs).Select(task => task.Address).ToList();
        var boxes = Figure.Count(sound.Piles.Sum(stack => stack.Boxes.Count));
        if (boxes.Value > 0)
        {
            var work = Labour.Together([Labour.For(Figure.Count(1), "drive-check", Times.DriveCheck), Labour.For(boxes, "drive-check-box", Times.DriveCheckBox)]);
            ready.AddRange(Add(new TaskDraft(Root / "drive-check", Job.DriveCheck, "Check that each box plays what it should", "FOH", 1, "sound", work, [.. ready, .. powered])
            {
                Danger = "Hearing: nobody stands before a box at its first signal.",
            }));
        }

        if (extents.Lines.Value > 0)
        {
            Add(new TaskDraft(
                Root / "line-check", Job.LineCheck, "Check every line", "stage and FOH", Times.LineCheck.Hands, "sound", Labour.For(extents.Lines, "line-check", Times.LineCheck), [.. ready, .. powered])
            {
                NotBefore = day.LineCheck?.Time.Value,
            });
        }
    }

    // The one who signs the power does the tests, where nobody of the crew is an electrician.
    private (string? Name, Doubts RestsOn) Signer()
    {
        if (brief.Gig.People.Any(person => person.Skills.Contains(Electrician, StringComparer.OrdinalIgnoreCase)))
        {
            return (null, Doubts.None);
        }

        var who = day.Holds.FirstOrDefault(row => row.What.Contains("power", StringComparison.OrdinalIgnoreCase))?.Who;
        return (who is { } given && given.Is(out var name) ? name : Electrician, Doubts.Of(who?.Doubt));
    }

    // Two holds may have the same words.
    private IReadOnlyList<Address> Add(TaskDraft task)
    {
        var address = task.Address;
        for (var number = 2; tasks.Exists(other => other.Address == address); number++)
        {
            address = task.Address / number;
        }

        tasks.Add(task with { Address = address });
        return [address];
    }
}

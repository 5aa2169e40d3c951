using System.Globalization;
using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How long the tasks of a load-in take in a company.</summary>
internal static class TaskTimesShape
{
    public static readonly RecordShape<TaskTimes> It = new("tasks", "How long the tasks of a load-in take, and with how many hands.", keys =>
    {
        var usual = TaskTimes.Default;
        var van = Task(keys, "van", usual.Van, "To empty a van.");
        var truck = Task(keys, "truck", usual.Truck, "To empty a truck of 7.5 t.");
        var trailer = Task(keys, "trailer", usual.Trailer, "To empty a long trailer over its tail-lift.");
        var push = Task(keys, "push", usual.Push, "For each travelling unit and 50 m; steps double it.");
        var deck = Task(keys, "deck", usual.Deck, "To build one deck on legs.");
        var point = Task(keys, "point", usual.Point, "To hang one point, straight down.");
        var bridle = Task(keys, "bridle", usual.Bridle, "To hang one bridle.");
        var truss = Task(keys, "truss", usual.Truss, "To bolt and sling 12 m of truss.");
        var fly = Task(keys, "fly", usual.Fly, "To fly one truss to its trim.");
        var flyPoint = Task(keys, "fly-point", usual.FlyPoint, "To level and secure a truss at one point.");
        var feeder = Task(keys, "feeder", usual.Feeder, "To lay one length of up to 63 A.");
        var heavyFeeder = Task(keys, "heavy-feeder", usual.HeavyFeeder, "To lay one length of more than 63 A.");
        var deadTest = Task(keys, "dead-test", usual.DeadTest, "Of one circuit.");
        var liveTest = Task(keys, "live-test", usual.LiveTest, "Of one circuit.");
        var stack = Task(keys, "stack", usual.Stack, "To build a stack of three boxes.");
        var hang = Task(keys, "hang", usual.Hang, "To fly a hang of ten boxes, besides the rigger.");
        var desk = Task(keys, "desk", usual.Desk, "To set up a place to mix from.");
        var fixture = Task(keys, "fixture", usual.Fixture, "To hang one fixture at waist height.");
        var fixtureCable = Task(keys, "fixture-cable", usual.FixtureCable, "To cable one fixture.");
        var fixtureAddress = Task(keys, "fixture-address", usual.FixtureAddress, "To check the address of one fixture.");
        var focus = Task(keys, "focus", usual.Focus, "To focus one fixture.");
        var input = Task(keys, "input", usual.Input, "To set and patch one input.");
        var lineCheck = Task(keys, "line-check", usual.LineCheck, "Of one line.");
        var driveCheck = Task(keys, "drive-check", usual.DriveCheck, "Of a system, beside its boxes.");
        var driveCheckBox = Task(keys, "drive-check-box", usual.DriveCheckBox, "Of one box.");
        var soundCheck = Task(keys, "sound-check", usual.SoundCheck, "Of one act, where the schedule does not say when it is over.");
        var loadOut = keys.Defaulted("load-out", Written.Percentage, usual.LoadOut, "What it takes of the load-in.", "60 %");
        var loadOutNight = keys.Defaulted("load-out-night", Written.Percentage, usual.LoadOutNight, "The same at night.", "75 %");
        return row => new TaskTimes
        {
            Point = point(row),
            Bridle = bridle(row),
            Truss = truss(row),
            Fly = fly(row),
            FlyPoint = flyPoint(row),
            Van = van(row),
            Truck = truck(row),
            Trailer = trailer(row),
            Push = push(row),
            Deck = deck(row),
            Feeder = feeder(row),
            HeavyFeeder = heavyFeeder(row),
            DeadTest = deadTest(row),
            LiveTest = liveTest(row),
            Stack = stack(row),
            Hang = hang(row),
            Desk = desk(row),
            Fixture = fixture(row),
            FixtureCable = fixtureCable(row),
            FixtureAddress = fixtureAddress(row),
            Focus = focus(row),
            Input = input(row),
            LineCheck = lineCheck(row),
            DriveCheck = driveCheck(row),
            DriveCheckBox = driveCheckBox(row),
            SoundCheck = soundCheck(row),
            LoadOut = loadOut(row),
            LoadOutNight = loadOutNight(row),
        };
    });

    private static Func<Row, Work> Task(Keys keys, string key, Work usual, string words) =>
        keys.Defaulted(key, Written.Work, usual, words, string.Create(CultureInfo.InvariantCulture, $"{usual.Time.Minutes} min x {usual.Hands}"));
}

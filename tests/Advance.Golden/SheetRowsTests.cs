using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Advance.Sheets;
using Advance.Sheets.Views;

namespace Advance.Golden;

/// <summary>What is planned stands on the sheets, what stands on the sheets is planned, and no two sheets say two things of one.</summary>
public sealed partial class SheetRowsTests
{
    public static TheoryData<string> Gigs => Samples.Gigs;

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_line_and_mix_of_every_act_is_on_its_input_list_and_on_the_card_of_its_box(string gig)
    {
        var plan = Samples.Plan(gig);
        var lists = InputListViews.Of(plan).Acts;
        var lines = lists.SelectMany(list => list.Lines.Select(line => $"{list.Act} {line.Channel.Text} {line.Source.Text} {line.Port.Text}"));
        Alike(plan.Brief.Gig.Acts.SelectMany(act => plan.Patch.Lines.Where(line => line.Act is null || line.Act == act.Name).Select(line => $"{act.Name} {line.Channel} {line.Source} {line.Port!.Device}-{line.Port.Number}")), lines);
        Alike(plan.Patch.Returns.Select(mix => $"{mix.Act} {mix.Row.Numbers}").Distinct(), lists.SelectMany(list => list.Mixes.Select(mix => $"{list.Act} {mix.Number.Text}")));

        var cards = StageBoxCardViews.Of(plan)!.Boxes.SelectMany(card => card.Inputs.Where(line => line.House.Text != "free").Select(line => $"{card.Box}-{line.Port.Text}"));
        Alike(plan.Patch.Lines.Select(line => $"{line.Port!.Device}-{line.Port.Number}").Distinct(), cards);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_box_and_every_fixture_is_on_a_sheet_once(string gig)
    {
        var plan = Samples.Plan(gig);
        Alike(plan.Sound.Stacks.SelectMany(stack => stack.Boxes).Select(box => box.Piece.Name), SystemViews.Of(plan)!.Sheets.SelectMany(sheet => sheet.Stacks).SelectMany(stack => stack.Boxes).Select(box => box.Name.Text));
        Alike(
            plan.Lighting.Fixtures.Select(fixture => $"{fixture.Number} {fixture.At?.Universe}/{fixture.At?.Slot}"),
            LightingPatchViews.Of(plan)!.Positions.SelectMany(position => position.Fixtures).Select(row => $"{row.Number.Text} {row.UniverseNumber.Text}/{row.Address.Text}"));
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_outlet_in_use_is_on_its_distribution_sheet_on_its_card_and_in_the_request_for_its_supply(string gig)
    {
        var plan = Samples.Plan(gig);
        var boxes = DistributionViews.Of(plan)!.Boxes;
        var used = boxes.SelectMany(box => box.Rows.Where(row => row.Feeds.Text != "spare").Select(row => $"{row.Name} {row.Feeds.Text}"));
        var planned = plan.Power.Circuits.Select(circuit => $"{circuit.Name} {circuit.Chain.Name}").ToList();
        var feeders = plan.Power.Distributions.Where(box => box.FedBy is { Number: > 0 }).Select(box => $"{box.FedBy!.Name} {box.Name}");
        Alike(planned.Concat(feeders), used);
        Alike(planned, CircuitCardsViews.Of(plan)!.Cards.Select(card => $"{Outlet(card.Circuit.Text)} {card.Feeds.Text}"));
        Alike(plan.Power.Circuits.Select(circuit => circuit.Name), SupplyRequestViews.Of(plan)!.Services.SelectMany(service => service.Hangs).Select(load => load.Circuit.Text));
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_load_of_every_truss_is_in_the_hoist_table_with_its_place(string gig)
    {
        var plan = Samples.Plan(gig);
        var cells = new RiggingCells(plan, new Sheets.Views.Cells(plan));
        string At(double? place) => cells.Length(place).Text;
        Alike(
            plan.Rigging.Trusses.SelectMany(truss => truss.Loads.Select(load => $"{truss.Name} {load.What} {(load.To is { } end ? $"{At(load.From)} to {At(end)}" : At(load.From))}")),
            HoistTableViews.Of(plan)?.Trusses.SelectMany(truss => truss.Loads.SelectMany(Each).Select(load => $"{truss.Name} {load}")) ?? []);
    }

    // 8 × Fixture 21–28, each: eight fixtures and their eight places.
    private static IEnumerable<string> Each(HoistTableView.Load row)
    {
        var run = Run().Match(row.What.Text);
        return run.Success
            ? row.At.Text.Split(", ").Select((at, index) => $"{run.Groups["name"].Value} {int.Parse(run.Groups["first"].Value, CultureInfo.InvariantCulture) + index} {at}")
            : [$"{row.What.Text} {row.At.Text}"];
    }

    [GeneratedRegex("^[0-9]+ × (?<name>.+) (?<first>[0-9]+)–[0-9]+, each$")]
    private static partial Regex Run();

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_finding_and_every_question_is_printed_once(string gig)
    {
        var plan = Samples.Plan(gig);
        Assert.Equal(plan.Findings.Count, FindingsSheetViews.Of(plan)!.Groups.Sum(group => group.Findings.Count));
        Alike(plan.Brief.OpenQuestions.Select(doubt => QuestionWords.Of(doubt, plan)), OpenQuestionsViews.Of(plan)!.Questions.Select(line => line.Question.Text));
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void A_lead_has_the_same_length_wherever_it_is_named(string gig)
    {
        var plan = Samples.Plan(gig);
        var runs = plan.Cables.Runs.ToDictionary(run => run.Label, StringComparer.Ordinal);
        var named = Words(gig).SelectMany(words => Lead().Matches(words)).Select(match => (Label: match.Groups["label"].Value, Metres: MetresOf(match))).Where(one => runs.ContainsKey(one.Label)).ToList();
        Assert.True(named.Count > runs.Count / 2, $"Only {named.Count} leads are named with their length.");
        Assert.All(named, one => Assert.Equal(runs[one.Label].MadeUp.Value!.Value.Meters, one.Metres, 1));
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void A_circuit_carries_the_same_on_every_sheet(string gig)
    {
        var plan = Samples.Plan(gig);
        var requested = SupplyRequestViews.Of(plan)!.Services.SelectMany(service => service.Hangs).ToDictionary(load => load.Circuit.Text, load => (load.InUse.Text, load.AtMost.Text), StringComparer.Ordinal);
        var rows = DistributionViews.Of(plan)!.Boxes.SelectMany(box => box.Rows.Select(row => (row.Name, Row: row))).Where(one => requested.ContainsKey(one.Name)).ToList();
        Assert.Equal(requested.Count, rows.Count);
        Assert.All(rows, one => Assert.Equal(requested[one.Name], (one.Row.InUse.Text, one.Row.AtMost.Text)));
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Every_symbol_of_a_working_is_explained_beside_its_formula(string gig)
    {
        var groups = WorkingsViews.Of(Samples.Plan(gig))!.Groups;
        Assert.NotEmpty(groups);
        var unexplained = groups.SelectMany(group => group.Lines.SelectMany(line => line.Inputs).Concat(group.InEach).SelectMany(SymbolsIn).Distinct()
            .Where(symbol => !Regex.IsMatch(group.Symbols.Text, $@"(^|[ ;,]){Regex.Escape(symbol)} ", RegexOptions.None, TimeSpan.FromSeconds(1)))
            .Select(symbol => $"{symbol} in {group.Formula.Text}"));
        Assert.Empty(unexplained);
    }

    // "M = 12 N·m (q = 3 Pa; S = 4 m³)": M, q and S.
    private static IEnumerable<string> SymbolsIn(WorkingsView.Put put) => Symbol().Matches($"{put.Said.Text} {put.Behind.Text}").Select(found => found.Groups["symbol"].Value);

    // "PD1-3" on the card is outlet 3 of PD1.
    private static string Outlet(string card) => card.LastIndexOf('-') is var dash ? $"{card[..dash]} outlet {card[(dash + 1)..]}" : card;

    private static void Alike(IEnumerable<string> planned, IEnumerable<string> printed) =>
        Assert.Equal(planned.Order(StringComparer.Ordinal), printed.Order(StringComparer.Ordinal));

    private static IEnumerable<string> Words(string gig)
    {
        var package = PackageBuilder.Build(Samples.Plan(gig), PackageRequest.Everything with { Formats = ["json"] }, CompanyFolder.None);
        using var read = JsonDocument.Parse(package.Files.Single().Bytes);
        return [.. Texts(read.RootElement.GetProperty("sheets"))];
    }

    private static IEnumerable<string> Texts(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(member => Texts(member.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Texts),
        JsonValueKind.String => [element.GetString()!],
        _ => [],
    };

    private static double MetresOf(Match match) => match.Groups["feet"] is { Success: true } feet
        ? Number(feet) * 0.3048
        : Number(match.Groups["metres"]);

    private static double Number(Group group) => double.Parse(group.Value, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<symbol>[^ (;\u00A0]+)\u00A0=", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Symbol();

    // "DRIVE-1, 2 m", also behind "SB1 out 15 · "; in whole feet "DRIVE-1, 10'".
    [GeneratedRegex(@"(^|· )(?<label>[^·,]+), ((?<metres>[0-9.]+)[\u00A0 ]m\b|(?<feet>[0-9]+)')", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Lead();
}

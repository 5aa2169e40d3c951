using System.Text;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Reading;
using Advance.Reading.Files;
using UnitsNet;

namespace Advance.Tests.Reading;

public sealed class BriefReaderTest
{
    private static readonly Lazy<BriefReading> Sample = new(() => BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml"));

    [Fact]
    public void The_harvest_supper_is_read_without_a_word()
    {
        Assert.Empty(Sample.Value.Findings.Select(finding => $"{finding.At} {finding.Says}"));
        Assert.NotNull(Sample.Value.Brief);
    }

    [Fact]
    public void Its_gig_says_what_is_written()
    {
        var gig = Sample.Value.Brief!.Gig;

        Assert.Equal(("Harvest Supper", "B"), (gig.Title, gig.Revision));
        Assert.Equal(new WrittenDate(DayOfWeek.Saturday, 12, 9, 2026), Assert.Single(gig.Days).Date.Value);
        Assert.Equal(["production manager, FOH", "stage, patch", "van, lights"], gig.People.Select(person => person.Does));
        Assert.Equal(["sound", "stage"], gig.People[1].Skills);

        var hold = Assert.Single(gig.Schedule, row => row.IsHold);
        Assert.Equal(("power on after test", "electrician"), (hold.What, hold.Who!.Value.Value));
        Assert.True(gig.Schedule[^1].Time.Value.IsNextDay);

        var stack = Assert.Single(gig.Sound.Stacks);
        Assert.Equal(("Main", new Sides(Side.StageRight, Side.StageLeft)), (stack.Name, stack.Sides));
        Assert.Equal([new CountedItem(1, "sub-18"), new(1, "top-10"), new(1, "top-10", Stance.UpsideDown)], stack.Boxes);
        Assert.Equal(new PortRange("DRIVE", PortKind.Output, new(1, 2)), stack.FedBy!.Value.Value);
        Assert.Equal(new Place.Measured(Length.FromMeters(4.6), null, Length.FromMeters(-0.4), null), stack.Place.Value);

        var act = Assert.Single(gig.Acts);
        Assert.Equal((5, 15, 5), (act.People.Value, act.Inputs.Count, act.Mixes.Count));
        Assert.Equal("Snare: top, #2", act.Inputs[1].Source);
        Assert.Equal(new NumberRange(10, 11), act.Inputs.Single(row => row.Source == "Keys L/R").Channels);
        Assert.Equal("J Tarrant", Assert.Single(gig.Accepted).By);
        Assert.Equal(2, Assert.Single(gig.CableWays).By.Count);
    }

    [Fact]
    public void Its_venue_company_and_stock_come_with_it()
    {
        var brief = Sample.Value.Brief!;

        Assert.Equal(["A", "B"], brief.Venue.Services.Select(service => service.Name));
        Assert.False(brief.Venue.Services[0].ResidualProtection.IsKnown);
        Assert.Equal(ElectricCurrent.FromAmperes(0.03), brief.Venue.Services[1].ResidualProtection.Value);
        Assert.Equal(26, brief.Venue.Services[0].SharedWith.Sum(load => load.InUse.Value.Amperes));
        Assert.Equal(4, brief.Venue.Access.Value.Count);
        Assert.Equal("Lower Mill Sound & Light", brief.Company.Name);
        Assert.Equal(new(10, 2), brief.Company.Policies.FreePorts);

        var sub = brief.Stock.Find("sub-18")!;
        Assert.Equal((Role.Loudspeaker, "sound", Known.Weighed), (sub.Role, sub.Department, sub.Weight!.Value.How));
        Assert.Equal(Length.FromMeters(10), brief.Stock.Find("mic-10")!.Cable!.Length.Value);
        Assert.Equal(1, brief.Stock.Find("short-boom")!.OutForRepair);
    }

    [Fact]
    public void Its_open_questions_are_those_of_gig_venue_and_company()
    {
        var questions = Sample.Value.Brief!.OpenQuestions;

        Assert.Equal(9, questions.Count);
        Assert.Contains(questions, doubt => doubt is { Subject: "services / A / residual-protection", Who: "venue", By: { Day: 4, Month: 9 }, Written: null });
        Assert.Contains(questions, doubt => doubt is { Subject: "acts / The Threshers / inputs / 12 / from", Who: "The Threshers", Written: "act" });
        Assert.All(questions, doubt => Assert.False(doubt.LeftOut));
    }

    [Fact]
    public void The_order_in_which_files_are_listed_changes_nothing()
    {
        var door = MemoryDoor.Of(
            ("gig.yaml", "gig: x\nday: Sat 12 Sep 2026\nstock: stock\n"),
            ("stock/b.yaml", "department: sound\nkinds:\n  k2: {name: b, owned: 1}\n  k1: {name: bad, owned: few}\n"),
            ("stock/a.csv", "id,name,owned\nk1,a,1\nk3,c,2\n"),
            ("stock/notes.txt", "not stock"));

        var (forwards, backwards) = (BriefReader.Read(door, "gig.yaml"), BriefReader.Read(door.Backwards(), "gig.yaml"));

        Assert.Equal(forwards.Findings.Select(finding => (finding.At, finding.Says)), backwards.Findings.Select(finding => (finding.At, finding.Says)));
        Assert.Equal(["reading/not-this"], forwards.Findings.Select(finding => finding.Rule));

        var mended = MemoryDoor.Of(
            ("gig.yaml", "gig: x\nday: Sat 12 Sep 2026\nstock: stock\n"),
            ("stock/b.yaml", "department: sound\nkinds:\n  k2: {name: b, owned: 1}\n"),
            ("stock/a.csv", "id,name,owned\nk1,a,1\nk3,c,2\n"));
        Assert.Equal(["k1", "k3", "k2"], BriefReader.Read(mended.Backwards(), "gig.yaml").Brief!.Stock.Kinds.Keys);
    }

    [Fact]
    public void A_gig_alone_is_a_brief()
    {
        var brief = Read("gig: x\nday: Sat 12 Sep 2026\n").Brief!;

        Assert.Same(Venue.Unknown, brief.Venue);
        Assert.Same(Company.Default, brief.Company);
        Assert.Empty(brief.Stock.Kinds);
    }

    [Fact]
    public void One_run_finds_what_is_wrong_in_all_files()
    {
        var reading = BriefReader.Read(
            MemoryDoor.Of(
                ("g/gig.yaml", "gig: x\nday: Sat 12/9/2026\nvenue: ../venue.yaml\ncompany: ../company.yaml\nstock: ../stock\n"),
                ("venue.yaml", "venue: Barn\nservices: {A: {rating: 32}}\n"),
                ("company.yaml", "company: [unclosed\nunits: x\n"),
                ("stock/a.csv", "id,name,weight\nk1,a,4\n"),
                ("stock/b.yaml", "kinds:\n  k2: {nmae: b}\n")),
            "g/gig.yaml");

        Assert.Null(reading.Brief);
        Assert.Equal(["company.yaml", "company.yaml", "g/gig.yaml", "stock/a.csv", "stock/b.yaml", "venue.yaml"], reading.Findings.Select(finding => finding.At.File));
        Assert.All(reading.Findings, finding => Assert.NotNull(reading.Sources.Quote(finding.At)));
    }

    [Theory]
    [InlineData("venue: «../venue.yaml»\n", "reading/outside")]
    [InlineData("venue: «/etc/passwd»\n", "reading/outside")]
    [InlineData("venue: «gone.yaml»\n", "reading/no-such-file")]
    [InlineData("venue: «stock»\n", "reading/no-such-file")]
    [InlineData("venue: «gig.yaml»\n", "reading/cycle")]
    [InlineData("company: «./gig.yaml»\n", "reading/cycle")]
    [InlineData("stock: «stock/../gig.yaml»\n", "reading/cycle")]
    [InlineData("stock: «empty»\n", "reading/no-such-file")]
    [InlineData("venue: «huge.yaml»\n", "reading/too-large")]
    public void A_reference_that_leads_nowhere_is_one_finding_where_it_stands(string marked, string rule)
    {
        var text = MarkedText.Of("gig: x\nday: Sat 12 Sep 2026\n" + marked);
        var door = new MemoryDoor([("gig.yaml", Encoding.UTF8.GetBytes(text.Text)), ("stock/a.csv", "id,name\nk,a\n"u8.ToArray()), ("empty/notes.txt", []), ("huge.yaml", new byte[20_000_000])]);

        var reading = BriefReader.Read(door, "gig.yaml");

        Assert.Null(reading.Brief);
        var finding = Assert.Single(reading.Findings, finding => finding.At.File == "gig.yaml");
        Assert.Equal((rule, text.Marks[0]), (finding.Rule, finding.At));
    }

    [Theory]
    [InlineData("gig: x\n", "reading/missing-key")]
    [InlineData("gig: x\nday: Sat 12 Sep 2026\ndays: {show: Sat 12 Sep 2026}\n", "reading/two-ways")]
    [InlineData("gig: x\nday: Sat 12 Sep 2026\nstage: {size: 8 x 5 m}\nstages: {A: {size: 8 x 5 m}}\n", "reading/two-ways")]
    [InlineData("gig: x\ndays: {}\n", "reading/too-few")]
    [InlineData("gig: x\nday: Sat 12 Sep 2026\ncable-ways: {W: {along: [FOH]}}\n", "reading/too-few")]
    [InlineData("- gig\n", "reading/wrong-kind")]
    [InlineData("", "reading/empty")]
    public void What_does_not_go_together_is_one_finding(string text, string rule) => Assert.Equal([rule], Read(text).Findings.Select(finding => finding.Rule));

    [Fact]
    public void Days_and_allowances_may_be_said_in_several_ways()
    {
        var gig = Read("gig: x\ndays:\n  build: Fri 18 Sep 2026\n  Saturday: {date: Sat 19 Sep 2026 TBC}\n  out: {date: TBC, kind: strike}\nallow: [lighting 18 kW, sound 900 kg TBC]\n").Brief!.Gig;

        Assert.Equal([("build", DayKind.Build), ("Saturday", DayKind.Show), ("out", DayKind.Strike)], gig.Days.Select(day => (day.Name, day.Kind)));
        Assert.Equal([true, true, false], gig.Days.Select(day => day.Date.IsKnown));
        Assert.Equal(18_000, (double)gig.Allowances[0].Draw!.Value.Value.Watts);
        Assert.Equal((900, true), (gig.Allowances[1].Weight!.Value.Value.Kilograms, gig.Allowances[1].Weight!.Value.Doubt is not null));

        var fed = Read("gig: x\nday: TBC\nallow: {lighting: 18 kW fed by service A TBC, video: 2 kW fed by PD1}\n").Brief!.Gig.Allowances;
        Assert.Equal(["service A", "PD1"], fed.Select(allowance => allowance.FedBy));
        Assert.Equal([true, false], fed.Select(allowance => allowance.Draw!.Value.Doubt is not null));

        var byName = Read("gig: x\ndays: TBC client\nallow: {lighting: 18 kW, video: TBC}\n").Brief!.Gig;
        Assert.False(Assert.Single(byName.Days).Date.IsKnown);
        Assert.Equal(["lighting", "video"], byName.Allowances.Select(allowance => allowance.What));
        Assert.Null(byName.Allowances[1].Draw ?? (object?)byName.Allowances[1].Weight);
        Assert.NotNull(byName.Allowances[1].Doubt);
    }

    [Fact]
    public void A_logo_is_named_from_the_company_s_file_and_known_from_the_tree()
    {
        var inside = BriefReader.Read(MemoryDoor.Of(("gig.yaml", "gig: x\nday: Sat 12 Sep 2026\ncompany: c/company.yaml\n"), ("c/company.yaml", "company: x\nlogo: ../art/logo.svg\n")), "gig.yaml");
        var outside = BriefReader.Read(MemoryDoor.Of(("gig.yaml", "gig: x\nday: Sat 12 Sep 2026\ncompany: company.yaml\n"), ("company.yaml", "company: x\nlogo: ../logo.svg\n")), "gig.yaml");

        Assert.Equal("art/logo.svg", inside.Brief!.Company.Logo);
        Assert.Equal(["reading/outside"], outside.Findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void A_concern_does_not_keep_a_gig_from_being_read()
    {
        var reading = Read("gig: x # TBC\nday: Sat 12 Sep 2026\n");

        Assert.NotNull(reading.Brief);
        Assert.Equal(Severity.Concern, Assert.Single(reading.Findings).Severity);
    }

    private static BriefReading Read(string text) => BriefReader.Read(MemoryDoor.Of(("gig.yaml", text)), "gig.yaml");
}

using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Records;

/// <summary>Recorded nitrogen and phosphate against the states' rules. Record and rule stay apart: nothing written is changed.</summary>
public sealed class FertilizerLawTests
{
    private static readonly Lawn Lawn = Some.Lawn() with { Work = SeedingWork.Overseed };

    private static readonly LogEntry Seeded = new LogEntry.SeededDown { Id = Id(90), At = At(0) };

    [Theory]
    [InlineData("us-ny", SeedingWork.Overseed, LawStanding.Breaks)] // New York ECL 17-2103: newly established lawns only
    [InlineData("us-ny", SeedingWork.NewEstablishment, LawStanding.Holds)]
    [InlineData("us-mn", SeedingWork.NewEstablishment, LawStanding.Holds)] // Minnesota: newly seeded, same season
    [InlineData("us-md", SeedingWork.Repair, LawStanding.Holds)] // Maryland Ag 6-224(2)(ii)3: re-establishing or repairing
    [InlineData("us-nj", SeedingWork.Overseed, LawStanding.Breaks)] // New Jersey, 2012 table, read second-hand: repair or establishment
    public void Phosphate_on_seed_down_day_is_held_against_the_states_rule(string pack, SeedingWork work, LawStanding standing)
    {
        var found = Phosphorus(Lawn with { Work = work }, pack, Entry(1, 0), Seeded);
        Assert.Equal(standing, found!.Standing);
        Assert.Equal(standing is LawStanding.Breaks, found.Over is not null);
        Assert.Equal(standing is LawStanding.Holds, found.Instead.Length == 0);
    }

    [Fact]
    public void All_that_went_on_is_over_where_none_is_allowed()
    {
        // 16.67 lb of 12-12-12 on 2,000 sq ft: 1 lb P2O5 per 1,000 sq ft.
        var over = Phosphorus(Lawn, "us-ny", Entry(1, 0), Seeded)!.Over!;
        Assert.Equal(1.0, new MassPerArea(over.Value).PoundsPerThousandSquareFeet, 9);
        Assert.NotEmpty(over.Working.Inputs);
    }

    [Fact]
    public void A_soil_test_in_date_lifts_the_rule_and_an_old_one_does_not()
    {
        // Maryland: a soil test of at most three years.
        LawStanding With(int year) => Phosphorus(Lawn with { Soil = new SoilFacts { PhosphorusPpm = 10, TestDate = new DateOnly(year, 4, 1) } }, "us-md", Entry(1, 0), Seeded)!.Standing;
        Assert.Equal((LawStanding.Holds, LawStanding.Breaks), (With(2024), With(2021)));
    }

    [Fact]
    public void An_exemption_for_seeding_holds_from_seed_down_on_and_not_in_spring()
    {
        var repair = Lawn with { Work = SeedingWork.Repair };
        Assert.Equal(LawStanding.Breaks, Phosphorus(repair, "us-md", Entry(1, -120), Seeded)!.Standing);
        Assert.Equal(LawStanding.Holds, Phosphorus(repair, "us-md", Entry(1, -1), Seeded)!.Standing);
        Assert.Equal(LawStanding.Holds, Phosphorus(repair, "us-md", Entry(1, 20), Seeded)!.Standing);
        Assert.Equal(LawStanding.Unsettled, Phosphorus(repair, "us-md", Entry(1, 20))!.Standing);
        Assert.Equal(LawStanding.Unsettled, Phosphorus(repair with { Work = null }, "us-md", Entry(1, 0), Seeded)!.Standing);
    }

    [Fact]
    public void A_pack_without_a_phosphorus_rule_says_so_and_finds_nothing()
    {
        foreach (var pack in Tables.Shipped.RulePacks.Where(p => p.Phosphorus.RestrictedAbovePhosphate is null))
        {
            Assert.Null(Phosphorus(Lawn, pack.Id, Entry(1, 0), Seeded));
            var total = Book(Lawn, pack.Id, Entry(1, 0), Seeded).Years[0].Totals.Single(t => t.Name == "phosphate");
            Assert.Contains("no phosphorus rule", total.Sentence, StringComparison.Ordinal);
            Assert.False(total.BreaksRule);
        }
    }

    [Fact]
    public void The_years_total_says_how_many_records_are_against_the_rule()
    {
        var total = Book(Lawn, "us-ny", Entry(1, 0), Entry(2, 15), Seeded).Years[0].Totals.Single(t => t.Name == "phosphate");
        Assert.True(total.BreaksRule);
        Assert.Contains("2 records are against it", total.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, null, LawStanding.Breaks)] // Maryland Ag 6-224: 0.9 lb N in all
    [InlineData(0.875, 0.20, LawStanding.Holds)] // 0.7 / (1 - 0.20) = 0.875
    [InlineData(0.88, 0.20, LawStanding.Breaks)]
    [InlineData(0.5, 0.10, LawStanding.Breaks)] // below 20 % slow, strict reading
    [InlineData(0.5, null, LawStanding.Unsettled)]
    public void Nitrogen_of_one_application_is_held_against_Maryland(double pounds, double? slow, LawStanding standing)
    {
        var lawn = Lawn with { Starter = slow is { } share ? new FertilizerProduct { Name = "mine", Nitrogen = Fraction.Of(0.2), Phosphate = Fraction.Of(0), Potash = Fraction.Of(0), SlowNitrogen = Fraction.Of(share) } : null };
        Assert.Equal(standing, Nitrogen(lawn, "us-md", Put(1, 0, pounds)).Standing);
    }

    [Fact]
    public void Two_bags_on_one_day_are_one_application()
    {
        var log = FieldLog.Of([Put(1, 0, 0.6), Put(2, 0, 0.6), Put(3, 1, 0.6)]);
        LawFinding Of(int id) => FertilizerLaw.Of(Lawn, log, Tables.Shipped.Pack("us-md")!, log.Standing.OfType<LogEntry.Applied>().Single(e => e.Id == Id(id))).Single();
        Assert.Equal((LawStanding.Unsettled, LawStanding.Breaks, LawStanding.Unsettled), (Of(1).Standing, Of(2).Standing, Of(3).Standing));
        Assert.Equal(0.3, new MassPerArea(Of(2).Over!.Value).PoundsPerThousandSquareFeet, 9);
    }

    [Fact]
    public void A_year_over_the_maximum_says_by_how_much_and_what_to_leave_out()
    {
        // New Jersey: 3.2 lb N a year (data/rules/us-nj.json, read second-hand).
        var log = FieldLog.Of([Put(1, -100, 2.0), Put(2, 0, 1.5)]);
        var year = FertilizerLaw.Against(Lawn, log, Tables.Shipped.Pack("us-nj")!, 2025, ["Late-fall feed"])[0];
        Assert.Equal(("record.nitrogen.year", LawStanding.Breaks), (year.Id, year.Standing));
        Assert.Equal(0.3, new MassPerArea(year.Over!.Value).PoundsPerThousandSquareFeet, 9);
        Assert.Contains("late-fall feed", year.Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_recorded_is_ever_altered_or_left_out() => Gen.Select(Gen.OneOfConst([.. Tables.Shipped.RulePacks]), Gen.Int[-200, 90].Array[1, 5], Gen.Double[0.1, 5]).Sample((pack, days, pounds) =>
    {
        LogEntry[] entries = [Seeded, .. days.Select((day, i) => Put(i + 1, day, pounds))];
        var log = FieldLog.Of(entries);
        var shown = RecordBook.Of(Lawn, log, pack).Years.SelectMany(y => y.Records).Select(r => r.Entry).ToList();
        Assert.Equal(days.Length, shown.Count);
        Assert.All(shown, entry => Assert.Same(entries.Single(e => e.Id == entry.Id), entry));
    });

    [Fact]
    public void A_struck_record_and_what_is_no_fertilizer_meet_no_rule()
    {
        Assert.Null(Phosphorus(Lawn, "us-ny", Entry(1, 0), Seeded, new LogEntry.Struck(Id(1), "wrong lawn") { Id = Id(80), At = At(1) }));
        Assert.Empty(FertilizerLaw.Against(Lawn, FieldLog.Of([Entry(1, 0) with { What = Entry(1, 0).What with { Kind = ApplicationKind.Seed, Actives = [] } }]), Tables.Shipped.Pack("us-md")!, 2025, []));
    }

    private static RecordBook Book(Lawn lawn, string pack, params LogEntry[] log) => RecordBook.Of(lawn, FieldLog.Of(log), Tables.Shipped.Pack(pack)!);

    private static LawFinding? Phosphorus(Lawn lawn, string pack, LogEntry.Applied entry, params LogEntry[] others) =>
        FertilizerLaw.Of(lawn, FieldLog.Of([entry, .. others]), Tables.Shipped.Pack(pack)!, entry).FirstOrDefault(f => f.Id == "record.phosphorus");

    private static LawFinding Nitrogen(Lawn lawn, string pack, LogEntry.Applied entry) =>
        FertilizerLaw.Of(lawn, FieldLog.Of([entry]), Tables.Shipped.Pack(pack)!, entry).Single(f => f.Id == "record.nitrogen.application");

    /// <summary>A balanced 12-12-12 at 1 lb N and 1 lb P2O5 per 1,000 sq ft.</summary>
    private static LogEntry.Applied Entry(int id, int days) => Put(id, days, 1.0) with
    {
        What = Put(id, days, 1.0).What with { Product = "balanced 12-12-12 starter", Amount = new(Mass.FromPounds(16.67), null), Actives = [new("nitrogen", Mass.FromPounds(2.0)), new("phosphate", Mass.FromPounds(2.0))] },
    };

    private static LogEntry.Applied Put(int id, int days, double pounds) => new(new Application
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "mine",
        Amount = new(Mass.FromPounds(pounds * 10.0), null),
        Area = Area.FromSquareFeet(2000.0),
        Actives = [new("nitrogen", Mass.FromPounds(pounds * 2.0))],
    })
    { Id = Id(id), At = At(days) };

    private static DateTimeOffset At(int days) => new(Some.SeedDown.AddDays(days).ToDateTime(new TimeOnly(15, 0)), TimeSpan.FromHours(-5));

    private static Guid Id(int n) => new(n, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
}

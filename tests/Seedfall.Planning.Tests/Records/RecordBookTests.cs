using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Records;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Tests.Plan;
using Tables = Seedfall.Planning.Tests.Rules.Tables;

namespace Seedfall.Planning.Tests.Records;

/// <summary>The record book shows every application once, what was corrected, what is missing and how the year stands.</summary>
public sealed class RecordBookTests
{
    private static readonly DateTimeOffset At = new(2026, 9, 8, 7, 30, 0, TimeSpan.FromHours(-5));

    private static readonly Lawn Lawn = Lawns.Known(InventedWeather.North) with { RulePack = "us-oh", AppliedForHire = true };

    private static readonly Application Sprayed = new()
    {
        Kind = ApplicationKind.Pesticide,
        Product = "mesotrione 4 lb/gal",
        Amount = new(null, Volume.FromFluidOunces(0.2296)),
        Area = Area.FromSquareFeet(2000.0),
        Actives = [new("mesotrione", MassOn(5.0))],
    };

    private static readonly Application Fed = new()
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "balanced 12-12-12 starter",
        Amount = new(Mass.FromPounds(16.67), null),
        Area = Area.FromSquareFeet(2000.0),
        Actives = [new("nitrogen", Mass.FromPounds(2.0))],
    };

    [Fact]
    public void Both_versions_of_a_corrected_record_are_there_with_the_reason()
    {
        var book = Book([Entry(1, Sprayed), Entry(2, Sprayed with { Target = "crabgrass", Replaces = Id(1), Why = "the target was left out" })]);
        var record = Assert.Single(Assert.Single(book.Years).Records);
        Assert.Equal("crabgrass", record.Entry.What.Target);
        var earlier = Assert.Single(record.Earlier);
        Assert.Equal((Id(1), "the target was left out"), (earlier.Entry.Id, earlier.Why));
        Assert.Same(record, book.Find(Id(2)));
        Assert.Same(record, book.Find(Id(1)));
        Assert.Null(book.Find(Id(3)));
    }

    [Fact]
    public void A_struck_record_stays_visible_with_its_reason_and_counts_for_nothing()
    {
        var book = Book([Entry(1, Fed), new LogEntry.Struck(Id(1), "the neighbor's lawn") { Id = Id(9), At = At }]);
        var record = Assert.Single(book.Years[0].Records);
        Assert.Equal((EntryState.Struck, "the neighbor's lawn"), (record.State, record.StruckWhy));
        Assert.Empty(book.Years[0].Totals);
    }

    [Fact]
    public void Rivals_are_both_shown_and_both_count()
    {
        var book = Book([Entry(1, Fed), Entry(2, Fed with { Replaces = Id(1), Why = "weighed again" }), Entry(3, Fed with { Replaces = Id(1), Why = "area measured again" })]);
        Assert.Equal([Id(3)], book.Find(Id(2))!.Rivals);
        Assert.Equal(2, book.Years[0].Totals.Single().Applications);
    }

    [Fact]
    public void What_Ohio_asks_of_work_for_hire_and_is_missing_is_named()
    {
        // Ohio Administrative Code 901:5-11-10 (A)(2): names, customer and address, size, product and number, amount, volume of
        // dilution, equipment, start and end, wind and temperature.
        var missing = Book([Entry(1, Sprayed)]).Years[0].Records[0].Missing;
        RecordField[] asked =
        [
            RecordField.RegistrationNumber, RecordField.Address, RecordField.EndTime, RecordField.Customer,
            RecordField.Applicator, RecordField.Dilution, RecordField.Method, RecordField.Weather,
        ];
        Assert.Equal(asked.Order(), missing.Where(m => m.AskedBy.Any(r => r.Name.StartsWith("Ohio", StringComparison.Ordinal))).Select(m => m.Field).Order());
        Assert.All(asked, field => Assert.True(missing.Single(m => m.Field == field).ByLaw));
        Assert.False(missing.Single(m => m.Field is RecordField.Reentry).ByLaw);
    }

    [Fact]
    public void A_whole_record_of_a_whole_lawn_misses_nothing()
    {
        var lawn = Lawn with { Address = "1 Invented Road, Nowhere 00000", Owner = "the owner" };
        var whole = Sprayed with
        {
            Ended = At.AddMinutes(30),
            RegistrationNumber = "0000-000",
            Carrier = Volume.FromGallons(2.0),
            Target = "crabgrass",
            Method = "backpack sprayer",
            AtStart = new FieldWeather { Wind = Speed.FromMilesPerHour(3.0), From = WindFrom.West, Air = Temperature.FromFahrenheit(66.0) },
            Applicator = "the adviser",
            License = "1",
            Reentry = "when dry",
        };
        foreach (var pack in Tables.Shipped.RulePacks)
        {
            Assert.Empty(RecordBook.Of(lawn, FieldLog.Of([Entry(1, whole)]), pack).Years[0].Records[0].Missing);
        }
    }

    [Fact]
    public void No_pesticide_law_is_put_to_fertilizer_and_none_for_hire_to_an_owner()
    {
        Assert.Empty(Book([Entry(1, Fed)]).Years[0].Records[0].Missing);
        var owner = RecordBook.Of(Lawn with { AppliedForHire = false }, FieldLog.Of([Entry(1, Sprayed)]), Pack("us-ny"));
        Assert.DoesNotContain(owner.Years[0].Records[0].Missing, m => m.Field is RecordField.ZipCode or RecordField.Customer);
    }

    [Theory]
    [InlineData("general", 2.0)] // 7 CFR 110.3, 2 years
    [InlineData("us-in", 2.0)] // Indiana Code 15-16-5-59 (b)
    [InlineData("us-ny", 3.0)] // New York ECL 33-1205
    [InlineData("us-oh", 3.0)] // Ohio State University, commercial record keeping
    public void The_longest_retention_is_said(string pack, double years) =>
        Assert.Equal(years, RecordBook.Of(Lawn, FieldLog.Empty, Pack(pack)).Retention.Years.Value);

    [Fact]
    public void Three_sprays_over_the_yearly_maximum_are_said_to_be_over()
    {
        // HortScience 53(11):1689: 560 g a hectare a year, 16 fl oz an acre of 4 lb/gal; 5 + 5 + 8 is over, 5 + 5 is not.
        var lawn = Lawn with { PreEmergent = Lawn.PreEmergent! with { MaximumPerYear = null } };
        ActiveTotal Total(params double[] ounces) => RecordBook.Of(lawn, FieldLog.Of(ounces.Select((oz, i) => Entry(i + 1, Sprayed with { Actives = [new("mesotrione", MassOn(oz))] }))), Pack("general")).Years[0].Totals.Single();
        var (over, within) = (Total(5.0, 5.0, 8.0), Total(5.0, 5.0));
        Assert.True(over.IsOver);
        Assert.Contains("Over", over.Sentence, StringComparison.Ordinal);
        Assert.False(within.IsOver);
        Assert.Equal(560.0, within.Most!.Value * 1.0e7, 0.5);
    }

    [Fact]
    public void A_weighed_product_is_held_to_its_label_by_active_ingredient_in_percent()
    {
        // Arithmetic, not outside evidence: 24 lb per acre of a 50 % powder are 12 lb of active ingredient per acre.
        var label = Lawn.PreEmergent! with { ActiveIngredient = "siduron", Formulation = FormulationClass.WettablePowder, Strength = ProductStrength.Percent(Fraction.FromPercent(50)), Rate = MassPerArea.FromPoundsPerAcre(8), MaximumRate = null, MaximumPerYear = MassPerArea.FromPoundsPerAcre(24) };
        Application Powder(double poundsPerAcre) => Sprayed with
        {
            Product = "siduron 50 % wettable powder",
            Amount = new(LabelRate.ProductFor(MassPerArea.FromPoundsPerAcre(poundsPerAcre), Sprayed.Area), null),
            Actives = [new("siduron", LabelRate.ProductFor(MassPerArea.FromPoundsPerAcre(poundsPerAcre / 2), Sprayed.Area))],
        };
        ActiveTotal Total(params double[] pounds) => RecordBook.Of(Lawn with { PreEmergent = label }, FieldLog.Of(pounds.Select((lb, i) => Entry(i + 1, Powder(lb)))), Pack("general")).Years[0].Totals.Single();
        Assert.Equal(12.0, new MassPerArea(Total(8).Most!.Value).PoundsPerAcre, 6);
        Assert.False(Total(8, 16).IsOver);
        Assert.True(Total(8, 17).IsOver);
        Assert.Equal("of 1, by weight", Total(8).Most!.Working.Inputs.Single(i => i.Symbol == "s").Unit);
    }

    [Fact]
    public void Nitrogen_is_held_against_the_rule_pack()
    {
        var pack = Pack("general") with { Nitrogen = Pack("general").Nitrogen with { MaxPerYear = 1.5 } };
        var total = RecordBook.Of(Lawn, FieldLog.Of([Entry(1, Fed), Entry(2, Fed with { Actives = [new("Nitrogen", Mass.FromPounds(0.8))] })]), pack).Years[0].Totals.Single();
        Assert.Equal(1.4, new MassPerArea(total.Heaviest.Value).PoundsPerThousandSquareFeet, 9);
        Assert.False(total.IsOver);
        Assert.Contains("0.1 lb per 1,000 sq ft", total.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Years_are_those_of_the_lawns_clock_and_of_the_span_asked_for()
    {
        var night = new LogEntry.Applied(Fed) { Id = Id(1), At = new DateTimeOffset(2026, 12, 31, 23, 30, 0, TimeSpan.FromHours(-5)) };
        var log = FieldLog.Of([night, Entry(2, Fed) with { At = At.AddYears(-1) }, Entry(3, Fed) with { At = At.AddYears(1) }]);
        Assert.Equal([2027, 2026, 2025], RecordBook.Of(Lawn, log, Pack("general")).Years.Select(y => y.Year));
        Assert.Equal(Id(1), Assert.Single(Assert.Single(RecordBook.Of(Lawn, log, Pack("general"), 2026, 2026).Years).Records).Entry.Id);
        Assert.Throws<ArgumentOutOfRangeException>(() => RecordBook.Of(Lawn, log, Pack("general"), 2027, 2026));
    }

    [Fact]
    public void Every_application_is_in_the_book_whatever_order_it_came_in() =>
        Gen.Select(Gen.Int[0, 9].Array[1, 10], Gen.Int[1, 12].Array[0, 4], Gen.Int[0, 1000]).Sample((links, strikes, seed) =>
        {
            LogEntry[] entries =
            [
                .. links.Select((to, i) => Entry(i + 1, to < i ? Fed with { Replaces = Id(to + 1), Why = "again" } : Fed)),
                .. strikes.Select((of, i) => new LogEntry.Struck(Id(of), "wrong") { Id = Id(100 + i), At = At }),
            ];
            var mixed = (LogEntry[])entries.Clone();
            new Random(seed).Shuffle(mixed);
            var (book, other) = (Book(entries), Book(mixed));
            var records = book.Years.SelectMany(y => y.Records).ToList();
            Assert.Equal(records.Select(r => r.Entry.Id), other.Years.SelectMany(y => y.Records).Select(r => r.Entry.Id));
            Assert.Equal(records.Count, records.DistinctBy(r => r.Entry.Id).Count());
            Assert.Equal(
                entries.OfType<LogEntry.Applied>().Select(e => e.Id).Order(),
                records.Select(r => r.Entry.Id).Concat(records.SelectMany(r => r.Earlier).Select(e => e.Entry.Id)).Distinct().Order());
        });

    private static RecordBook Book(IEnumerable<LogEntry> entries) => RecordBook.Of(Lawn, FieldLog.Of(entries), Pack("us-oh"));

    private static RulePack Pack(string id) => Tables.Shipped.Pack(id)!;

    private static LogEntry.Applied Entry(int id, Application what) => new(what) { Id = Id(id), At = At };

    /// <summary>Mesotrione in so many fluid ounces an acre of 4 lb/gal on 2,000 sq ft.</summary>
    private static Mass MassOn(double ouncesPerAcre) => Mass.FromKilograms(
        VolumePerArea.FromFluidOuncesPerAcre(ouncesPerAcre).LitersPerSquareMeter * Area.FromSquareFeet(2000.0).SquareMeters * (Mass.FromPounds(4.0).Kilograms / Volume.FromGallons(1.0).Liters));

    private static Guid Id(int n) => new(n, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1);
}

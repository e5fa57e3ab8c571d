using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Tests.Records;

public sealed class YearTotalsTests
{
    private static readonly Area Acre = Area.FromAcres(1);

    [Fact]
    public void Applications_of_one_name_add_up_by_the_lawns_own_year()
    {
        var log = FieldLog.Of([Applied("2026-01-01T00:30:00-06:00", null, 0.1), Applied("2026-05-01T09:00:00-05:00", null, 0.2, "Mesotrione "), Applied("2025-12-31T23:30:00-06:00", null, 0.4)]);
        var total = Assert.Single(YearTotals.Of(log, 2026));
        Assert.Equal("mesotrione", total.Name);
        Assert.Equal(0.3, total.Amount.Kilograms, 12);
        Assert.Equal(0.3 / Acre.SquareMeters, total.Heaviest.KilogramsPerSquareMeter, 15);
        Assert.Equal(2, total.Applications);
    }

    [Fact]
    public void Ground_gets_what_the_whole_lawn_got_and_its_own_patch()
    {
        var log = FieldLog.Of([Applied("2026-04-01T09:00:00Z", null, 1), Applied("2026-05-01T09:00:00Z", "front", 2), Applied("2026-06-01T09:00:00Z", "back", 3), Applied("2026-07-01T09:00:00Z", "front", 2)]);
        var total = Assert.Single(YearTotals.Of(log, 2026));
        Assert.Equal("front", total.PatchId);
        Assert.Equal(5.0 / Acre.SquareMeters, total.Heaviest.KilogramsPerSquareMeter, 12);
        Assert.Equal(8.0, total.Amount.Kilograms, 12);
    }

    [Fact]
    public void A_record_put_right_counts_once_and_a_struck_correction_gives_the_first_back()
    {
        var first = Applied("2026-04-01T09:00:00Z", null, 1);
        var second = Applied("2026-04-01T09:00:00Z", null, 2) with { Id = Guid.NewGuid() };
        second = second with { What = second.What with { Replaces = first.Id, Why = "misread" } };
        Assert.Equal(2.0, Assert.Single(YearTotals.Of(FieldLog.Of([first, second]), 2026)).Amount.Kilograms);
        var strike = new LogEntry.Struck(second.Id, "was right after all") { Id = Guid.NewGuid(), At = second.At.AddDays(1) };
        Assert.Equal(1.0, Assert.Single(YearTotals.Of(FieldLog.Of([first, second, strike]), 2026)).Amount.Kilograms);
    }

    [Fact]
    public void The_heaviest_is_never_less_than_the_mean_and_never_more_than_all_in_one_place() =>
        Gen.Select(Gen.Int[0, 2], Gen.Double[0.01, 5]).Array[1, 12].Sample(parts =>
        {
            var log = FieldLog.Of(parts.Select((p, i) => Applied($"2026-03-{i + 1:00}T09:00:00Z", p.Item1 == 0 ? null : $"p{p.Item1}", p.Item2)));
            var total = Assert.Single(YearTotals.Of(log, 2026));
            var all = parts.Sum(p => p.Item2);
            Assert.Equal(all, total.Amount.Kilograms, 9);
            Assert.InRange(total.Heaviest.KilogramsPerSquareMeter * Acre.SquareMeters, parts.Max(p => p.Item2) * (1 - 1e-9), all * (1 + 1e-9));
        });

    [Fact]
    public void Nothing_recorded_is_no_total() => Assert.Empty(YearTotals.Of(FieldLog.Empty, 2026));

    private static LogEntry.Applied Applied(string at, string? patch, double kilograms, string name = "mesotrione") => new(new Application
    {
        Kind = ApplicationKind.Pesticide,
        Product = "a suspension",
        Amount = new ProductAmount(null, Volume.FromLiters(kilograms * 2)),
        Area = Acre,
        Actives = [new AppliedActive(name, Mass.FromKilograms(kilograms))],
    })
    {
        Id = Guid.NewGuid(),
        At = DateTimeOffset.Parse(at, System.Globalization.CultureInfo.InvariantCulture),
        PatchId = patch,
    };
}

using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Tests.Plan;

namespace Seedfall.Planning.Tests.Ground.Site;

public sealed class ClimateFactsTests
{
    [Fact]
    public void A_history_gives_winters_frosts_months_and_hints()
    {
        var facts = ClimateFacts.Of(InventedWeather.Years(1990, 2023, InventedWeather.North), south: false);
        Assert.Equal(30, facts.Winters!.Coldest.Count);
        Assert.Equal(1994, facts.Winters.Coldest[0].Year);
        Assert.Equal(facts.Winters.Zone, HardinessZone.Of(Temperature.FromCelsius(facts.Winters.MeanExtreme.Value)));
        Assert.Equal(12, facts.Months.Count);
        Assert.True(facts.SpringFrost!.Median.AsDate() < facts.AutumnFrost!.Median.AsDate());
        Assert.True(facts.AutumnFrost.Early <= facts.AutumnFrost.Median.AsDate() && facts.AutumnFrost.Median.AsDate() <= facts.AutumnFrost.Late);
        Assert.True(facts.AutumnFrost.Median.AsDate() < facts.AutumnHardFrost!.Median.AsDate());
        Assert.All(facts.Months, m => Assert.InRange(m.RainMm, m.DryMm, m.WetMm));
        Assert.Equal(2, facts.Grasses.Count);
    }

    [Fact]
    public void Few_winters_say_so_and_leave_the_zone_open()
    {
        var winters = ClimateFacts.Of(InventedWeather.Years(2017, 2023, InventedWeather.North), south: false).Winters!;
        Assert.Equal(6, winters.Coldest.Count);
        Assert.Contains("these are 6", winters.MeanExtreme.Working.Note, StringComparison.Ordinal);
        Assert.InRange(winters.Chances.Sum(c => c.Chance), 0.8, 1.0 + 1e-9);
    }

    [Fact]
    public void A_cold_wave_is_one_winter_however_it_lies_across_the_new_year()
    {
        // Constant at 10 and 0 degC, but for one cold spell of -20 degC in December and one of -30 degC in January of the same winter.
        var winters = Winters.Of(Constant(new DateOnly(2020, 7, 1), new DateOnly(2022, 6, 30), d => d == new DateOnly(2020, 12, 28) ? -20 : d == new DateOnly(2021, 1, 5) ? -30 : 0), south: false)!;
        Assert.Equal([(2021, -30.0), (2022, 0.0)], winters.Coldest);
        Assert.Equal(-15.0, winters.MeanExtreme.Value, 1e-9);
        Assert.Equal("7b", winters.Zone.Name); // 5 degF, where 7b begins
    }

    [Fact]
    public void A_winter_with_a_hole_is_left_out()
    {
        var days = Constant(new DateOnly(2020, 7, 1), new DateOnly(2022, 6, 30), _ => -5);
        var holed = days with { Days = [.. days.Days.Where(d => d.Date < new DateOnly(2021, 1, 3) || d.Date > new DateOnly(2021, 1, 12))] };
        Assert.Equal([2022], Winters.Of(holed, south: false)!.Coldest.Select(c => c.Year));
        Assert.Null(Winters.Of(days with { Days = [.. days.Days.Take(90)] }, south: false));
    }

    [Fact]
    public void Half_a_year_of_weather_gives_no_more_than_it_can()
    {
        var facts = ClimateFacts.Of(Constant(new DateOnly(2021, 3, 1), new DateOnly(2021, 7, 31), _ => 3), south: false);
        Assert.Null(facts.Winters);
        Assert.Null(facts.AutumnFrost);
        Assert.Equal([3, 4, 5, 6, 7], facts.Months.Select(m => m.Month));
        Assert.Empty(facts.Year);
        Assert.Empty(facts.Grasses);
    }

    [Fact]
    public void Months_are_plain_sums()
    {
        var month = MonthNormals.Of(Constant(new DateOnly(2021, 5, 1), new DateOnly(2021, 5, 31), _ => 6)).Single();
        Assert.Equal((31.0, 13.0, 31 * 3.0), (month.RainMm, month.MeanC, month.GrowingDegreeDays));
    }

    [Fact]
    public void The_south_has_its_autumn_in_the_first_half()
    {
        var facts = ClimateFacts.Of(InventedWeather.Years(2004, 2023, InventedWeather.South), south: true);
        Assert.InRange(facts.AutumnFrost!.Median.AsDate().Month, 3, 6);
        Assert.InRange(facts.SpringFrost!.Median.AsDate().Month, 8, 12);
    }

    /// <summary>Nights as told, days 20 degC, 1 mm of rain a day.</summary>
    private static WeatherHistory Constant(DateOnly first, DateOnly last, Func<DateOnly, double> nightC) => new(
        null, "invented", [.. Enumerable.Range(first.DayNumber, last.DayNumber - first.DayNumber + 1).Select(DateOnly.FromDayNumber).Select(d => new WeatherDay(d, 20, nightC(d), 1.0))], [], []);
}

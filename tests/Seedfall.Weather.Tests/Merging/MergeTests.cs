using static Seedfall.Weather.Tests.Files;
using static Seedfall.Weather.Tests.Samples;

namespace Seedfall.Weather.Tests.Merging;

public sealed class MergeTests
{
    private const string Header = "date,tmax_c,tmin_c,rain_mm\n";

    [Fact]
    public void The_same_day_twice_with_the_same_values_is_noted()
    {
        var result = Good(Header + "2023-09-05,24.6,11.2,3.4\n2023-09-05,24.6,11.2,3.4\n");
        Assert.Single(result.History!.Days);
        Assert.Contains(result.Report!.Notes, n => n.StartsWith("1 days stand in the files more than once", StringComparison.Ordinal));
    }

    [Fact]
    public void Rows_that_complete_each_other_are_joined()
    {
        var day = Assert.Single(Good(Header + "2023-09-05,24.6,11.2,\n2023-09-05,,,3.4\n").History!.Days);
        Assert.Equal((24.6, 3.4), (day.TmaxC, day.RainMm));
    }

    [Fact]
    public void The_same_day_with_other_values_is_refused_naming_both_places()
    {
        var problem = Refused(Read(Text(Header + "2023-09-05,24.6,11.2,3.4\n", "a.csv"), Text(Header + "2023-09-04,20.5,11.2,3.4\n2023-09-05,24.9,11.2,3.4\n", "b.csv")));
        Assert.Equal(("b.csv", 3, 2), (problem.File, problem.Line, problem.Column));
        Assert.Contains("a.csv:2", problem.Expected, StringComparison.Ordinal);
        Assert.Equal("24.9 degC", problem.Found);
    }

    [Fact]
    public void Many_contradictions_are_counted_not_listed()
    {
        var text = Header + string.Concat(Enumerable.Range(1, 30).Select(d => FormattableString.Invariant($"2023-09-{d:00},24.6,11.2,{d}.5\n2023-09-{d:00},24.6,11.2,0.25\n")));
        var result = Read(text);
        Assert.Equal(21, result.Problems.Count);
        Assert.Equal("10 more like these", result.Problems[^1].Found);
    }

    [Fact]
    public void Rows_in_any_order_give_days_in_order()
    {
        var days = Good(Header + "2023-09-06,24.6,11.2,3.4\n2023-09-04,20.6,11.2,3.4\n2023-09-05,22.6,11.2,3.4\n").History!.Days;
        Assert.Equal([4, 5, 6], days.Select(d => d.Date.Day));
    }

    [Fact]
    public void Two_stations_are_refused_by_name()
    {
        var problem = Refused(Read(Text(UscrnDailyLine, "one.txt"), Text("99002" + UscrnDay("20260902", 20, 10, 0)[5..], "two.txt")));
        Assert.Equal("two.txt", problem.File);
        Assert.Contains("USCRN 99001, as in one.txt", problem.Expected, StringComparison.Ordinal);
        Assert.Equal("USCRN 99002", problem.Found);
    }

    [Fact]
    public void One_of_several_stations_can_be_asked_for()
    {
        var inputs = new[] { Text(UscrnDailyLine, "one.txt"), Text("99002" + UscrnDay("20260902", 20, 10, 0)[5..], "two.txt") };
        Assert.Equal("USCRN 99002", Good(WeatherFiles.Read(inputs, new WeatherReadOptions { Station = "99002" })).History!.StationName);
        Assert.Equal("files of station 99003", Refused(WeatherFiles.Read(inputs, new WeatherReadOptions { Station = "99003" })).Expected);
    }

    [Fact]
    public void Two_places_are_refused_with_their_distance()
    {
        var far = PowerDaily.Replace("-84.12, 42.31", "-84.12, 43.31", StringComparison.Ordinal);
        var problem = Refused(Read(Text(PowerDaily, "here.json"), Text(far, "there.json")));

        // One degree of a great circle on a sphere of 6,371 km is 111.2 km.
        Assert.EndsWith("111 km away", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Daily_rows_go_before_days_made_from_hours()
    {
        var first = new DateOnly(2026, 9, 1);
        var hours = Lines([.. UscrnHoursOf(first, _ => 15, _ => 0, _ => 0), .. UscrnHoursOf(first.AddDays(1), _ => 16, _ => 0.1, _ => 0)]);
        var result = Good(Read(Text(hours, "hours"), Text(UscrnDay("20260901", 24.6, 11.2, 3.2) + "\n", "days")));
        Assert.Equal([24.6, 16.5], result.History!.Days.Select(d => d.TmaxC));
        Assert.Contains(result.Report!.Notes, n => n.EndsWith("the hours completed 0 days and added 1.", StringComparison.Ordinal));
    }

    [Fact]
    public void Progress_ends_at_one_and_never_falls()
    {
        var seen = new Steps();
        Assert.True(WeatherFiles.Read([Text(UscrnDailyLine), Text(UscrnDay("20260902", 20, 10, 0))], null, seen).IsRead);
        Assert.Equal(1.0, seen.Values[^1]);
        Assert.Equal(seen.Values.Order(), seen.Values);
    }

    private sealed class Steps : IProgress<double>
    {
        internal List<double> Values { get; } = [];

        public void Report(double value) => Values.Add(value);
    }
}

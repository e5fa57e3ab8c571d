using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Plan;

namespace Seedfall.Planning.Tests.Ground.Site;

public sealed class PatchSunTests
{
    private static readonly SkyObstacle House = new() { Name = "house", Kind = ObstacleKind.Solid, FromDeg = 135, ToDeg = 225, HeightAngleDeg = 60 };

    private static readonly SkyObstacle Maple = new() { Name = "maple", Kind = ObstacleKind.Deciduous, FromDeg = 90, ToDeg = 270, HeightAngleDeg = 80, BareFrom = new DateOnly(2020, 10, 20) };

    private static readonly WeatherHistory Weather = InventedWeather.Years(2004, 2023, InventedWeather.North);

    [Fact]
    public void Obstacles_fill_in_the_hours_nobody_counted_and_the_plan_says_how()
    {
        var plan = Plan(With(null, House, Maple));
        Assert.DoesNotContain(plan.Assumptions, a => a.Id == "assumed.front.sun");
        var reason = plan.Verdict.Reasons.First(r => r.Figure?.Working.Formula.StartsWith("mean over the month", StringComparison.Ordinal) == true);
        Assert.InRange(reason.Figure!.Value, 0.5, 6.0);
        Assert.Contains(reason.Figure.Working.Inputs, i => i.Meaning.StartsWith("house, 135 to 225 degrees", StringComparison.Ordinal));
    }

    [Fact]
    public void Entered_hours_win_and_the_difference_is_told()
    {
        var plan = Plan(With(9.0, House, Maple));
        var told = plan.Verdict.Reasons.Single(r => r.Id == "verdict.front.sun");
        Assert.Contains("9 hours of sun were entered and are used", told.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(Plan(With(Hours(House)!.Value + 0.5, House)).Verdict.Reasons, r => r.Id == "verdict.front.sun");
    }

    [Fact]
    public void Deep_shade_that_was_reckoned_cures_first_like_one_that_was_counted()
    {
        var pit = House with { FromDeg = 0, ToDeg = 360, HeightAngleDeg = 70 };
        Assert.Equal(VerdictKind.CureFirst, Plan(With(null, pit)).Verdict.Kind);
    }

    [Fact]
    public void A_tree_lets_more_through_once_it_is_bare()
    {
        var patch = With(null, Maple).Patches[0];
        var (before, after) = (PatchSun.On(InventedWeather.North, patch, new DateOnly(2023, 10, 19)), PatchSun.On(InventedWeather.North, patch, new DateOnly(2023, 10, 21)));
        Assert.True(after.DirectHours > before.DirectHours + 2.0, $"{before.DirectHours} then {after.DirectHours}");
        Assert.True(PatchSun.On(InventedWeather.North, patch, new DateOnly(2023, 3, 1)).DirectHours > PatchSun.On(InventedWeather.North, patch, new DateOnly(2023, 5, 20)).DirectHours - 3.0);
    }

    [Fact]
    public void Leaves_fall_in_autumn_on_both_halves_of_the_earth()
    {
        var tree = Maple with { BareFrom = null };
        Assert.Equal(0.15, SunThrough.On(tree, new DateOnly(2023, 9, 15), 42.0));
        Assert.Equal(0.60, SunThrough.On(tree, new DateOnly(2023, 12, 15), 42.0));
        Assert.Equal(0.60, SunThrough.On(tree, new DateOnly(2023, 2, 15), 42.0));
        Assert.Equal(0.15, SunThrough.On(tree, new DateOnly(2023, 3, 15), -38.0));
        Assert.Equal(0.60, SunThrough.On(tree, new DateOnly(2023, 7, 15), -38.0));
        Assert.Equal(0.15, SunThrough.On(tree, new DateOnly(2023, 12, 15), -38.0));
    }

    [Fact]
    public void Height_and_distance_make_the_same_angle()
    {
        var measured = House with { HeightAngleDeg = null, Height = Length.FromFeet(30), Distance = Length.FromFeet(30) };
        Assert.Equal(45.0, measured.AngleDeg!.Value, 1e-9);
        Assert.Null((measured with { Distance = null }).AngleDeg);
    }

    [Theory]
    [InlineData(90.0, 90.0, 30.0, "patches[0].obstacles[0].to")]
    [InlineData(0.0, 400.0, 30.0, "patches[0].obstacles[0].to")]
    [InlineData(0.0, 90.0, 95.0, "patches[0].obstacles[0].heightAngle")]
    [InlineData(0.0, 90.0, null, "patches[0].obstacles[0].heightAngle")]
    public void The_door_names_what_cannot_stand_there(double from, double to, double? height, string path) =>
        Assert.Contains(LawnRules.Problems(With(null, House with { FromDeg = from, ToDeg = to, HeightAngleDeg = height })), p => p.Path == path);

    [Fact]
    public void A_season_runs_from_mid_August_to_mid_November()
    {
        var season = PatchSun.Season(InventedWeather.North, With(null, House).Patches[0], 2023);
        Assert.Equal((new DateOnly(2023, 8, 15), new DateOnly(2023, 11, 13)), (season[0].Date, season[^1].Date));
        Assert.Equal(new DateOnly(2023, 2, 15), PatchSun.Season(InventedWeather.South, With(null, House).Patches[0], 2023)[0].Date);
    }

    private static double? Hours(SkyObstacle obstacle) => PatchSun.Hours(InventedWeather.North, With(null, obstacle).Patches[0], 2023)?.Value;

    private static Lawn With(double? hours, params SkyObstacle[] obstacles)
    {
        var lawn = Lawns.Known(InventedWeather.North);
        return lawn with { Patches = [lawn.Patches[0] with { SunHours = hours, Obstacles = obstacles }] };
    }

    private static RecoveryPlan Plan(Lawn lawn) => RecoveryPlanner.Plan(lawn, new Choices { Season = 2023 }, Weather, Tests.Plan.Tables.Trade);
}

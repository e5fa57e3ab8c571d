using CsCheck;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Ground;

/// <summary>Allowed hours that overlap are named and never refused.</summary>
public sealed class HoursRemarksTests
{
    private const WeekDays MonWed = WeekDays.Monday | WeekDays.Wednesday;

    [Fact]
    public void Hours_entered_twice_are_named() =>
        Assert.Equal("Watering hours are entered twice: 05:00 to 09:00 on Mon, Wed. Once is enough; was another day or another time meant?", Only(new(MonWed, new(5, 0), new(9, 0)), new(MonWed, new(5, 0), new(9, 0))));

    [Fact]
    public void Hours_inside_others_are_named_in_either_order()
    {
        const string Expected = "Watering hours 06:00 to 07:00 on Mon lie wholly inside 05:00 to 09:00 on Mon, Wed and add nothing; was another day or another time meant?";
        Assert.Equal(Expected, Only(new(MonWed, new(5, 0), new(9, 0)), new(WeekDays.Monday, new(6, 0), new(7, 0))));
        Assert.Equal(Expected, Only(new(WeekDays.Monday, new(6, 0), new(7, 0)), new(MonWed, new(5, 0), new(9, 0))));
    }

    [Fact]
    public void Hours_that_overlap_in_part_are_said_to_be_taken_as_one() =>
        Assert.Equal("Watering hours 05:00 to 09:00 every day and 08:00 to 10:30 on Mon, Wed overlap: they are taken as one stretch, 05:00 to 10:30 on Mon, Wed.", Only(new(WeekDays.All, new(5, 0), new(9, 0)), new(MonWed, new(8, 0), new(10, 30))));

    [Fact]
    public void Hours_that_only_touch_or_fall_on_other_days_are_not_remarked()
    {
        Assert.Empty(Remarks(new(MonWed, new(5, 0), new(9, 0)), new(MonWed, new(9, 0), new(10, 0))));
        Assert.Empty(Remarks(new(MonWed, new(5, 0), new(9, 0)), new(WeekDays.Friday, new(5, 0), new(9, 0))));
        Assert.Empty(LawnRules.Remarks(Some.Lawn()));
    }

    [Fact]
    public void Hours_open_only_by_night_are_named_where_no_timer_is_known()
    {
        var night = Some.Lawn() with { Water = new WaterSupply { Allowed = [new(WeekDays.All, new(0, 0), new(4, 0)), new(WeekDays.All, new(22, 30), new(23, 59))] } };
        Assert.Contains("no timer is known", Assert.Single(LawnRules.Remarks(night)).Statement, StringComparison.Ordinal);
        Assert.Empty(LawnRules.Remarks(night with { Water = night.Water! with { Timer = true } }));
        Assert.Empty(LawnRules.Remarks(night with { Water = night.Water! with { Timers = [new("box", 1, 1)] } }));
        Assert.Empty(LawnRules.Remarks(night with { Water = night.Water! with { NewSeedPermit = true } }));
    }

    [Fact]
    public void A_pair_of_sound_hours_is_remarked_exactly_where_some_minute_belongs_to_both() =>
        Gen.Select(AnyHours, AnyHours).Sample((a, b) =>
        {
            var shared = (a.Days & b.Days) != 0 && Enumerable.Range(0, 1440).Any(m => In(a, m) && In(b, m));
            Assert.Equal(shared ? 1 : 0, Remarks(a, b).Count);
            Assert.Empty(LawnRules.Problems(Some.Lawn() with { Water = new WaterSupply { Allowed = [a, b] } }));
        });

    private static readonly Gen<WateringWindow> AnyHours =
        Gen.Select(Gen.Int[1, 127], Gen.Int[0, 22], Gen.Int[1, 23]).Where((_, from, length) => from + length <= 23)
            .Select((days, from, length) => new WateringWindow((WeekDays)days, new(from, 0), new(from + length, 0)));

    private static bool In(WateringWindow hours, int minute) =>
        minute >= hours.From.ToTimeSpan().TotalMinutes && minute < hours.To.ToTimeSpan().TotalMinutes;

    private static string Only(params WateringWindow[] hours) => Assert.Single(Remarks(hours)).Statement;

    private static IReadOnlyList<Planning.Plan.Advice> Remarks(params WateringWindow[] hours) =>
        LawnRules.Remarks(Some.Lawn() with { Water = new WaterSupply { Timer = true, Allowed = hours } });
}

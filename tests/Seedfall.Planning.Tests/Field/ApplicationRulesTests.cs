using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Plan;

namespace Seedfall.Planning.Tests.Field;

/// <summary>A record no one could have made is refused by name.</summary>
public sealed class ApplicationRulesTests
{
    private static readonly DateTimeOffset At = new(2026, 9, 8, 7, 30, 0, TimeSpan.FromHours(-5));

    private static readonly Engine.Weather.Place Place = InventedWeather.North;

    private static readonly Application Sound = new()
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "balanced 12-12-12 starter",
        Amount = new(Mass.FromPounds(10.0), null),
        Area = Area.FromSquareFeet(1000.0),
        Ended = At.AddMinutes(40.0),
        Actives = [new("nitrogen", Mass.FromPounds(1.2))],
        AtStart = new FieldWeather { Wind = Speed.FromMilesPerHour(3.0), Gust = Speed.FromMilesPerHour(3.0), Air = Temperature.FromFahrenheit(70.0), Humidity = Fraction.All },
    };

    [Fact]
    public void A_sound_record_stands() => Assert.Empty(Problems(Sound));

    [Fact]
    public void Each_fault_is_named()
    {
        Refused("a weight or a volume", Sound with { Amount = new(null, null) });
        Refused("a weight or a volume", Sound with { Amount = new(Mass.FromPounds(1.0), Volume.FromGallons(1.0)), Actives = [] });
        Refused("more than nothing", Sound with { Amount = new(null, Volume.Zero) });
        Refused("area: more than nothing", Sound with { Area = Area.FromSquareFeet(0.0) });
        Refused("check the unit or the outline", Sound with { Area = Area.FromAcres(40.0) });
        Refused("before it began", Sound with { Ended = At.AddSeconds(-1.0) });
        Refused("24 hours", Sound with { Ended = At.AddHours(24.0).AddSeconds(1.0) });
        Refused("more than the product", Sound with { Actives = [new("nitrogen", Mass.FromPounds(10.1))] });
        Refused("twice", Sound with { Actives = [new("nitrogen", Mass.FromPounds(1.0)), new("Nitrogen ", Mass.FromPounds(1.0))] });
        Refused("carrier", Sound with { Carrier = Volume.Zero });
        Refused("0 to 60 mph", Sound with { AtEnd = new FieldWeather { Wind = Speed.FromMilesPerHour(61.0) } });
        Refused("a gust is stronger", Sound with { AtEnd = new FieldWeather { Wind = Speed.FromMilesPerHour(6.0), Gust = Speed.FromMilesPerHour(5.0) } });
        Refused("air from", Sound with { AtEnd = new FieldWeather { Air = Temperature.FromCelsius(70.0) } });
        Refused("humidity", Sound with { AtEnd = new FieldWeather { Humidity = Fraction.None } });
        Refused("needs its reason", Sound with { Replaces = Guid.NewGuid() });
        Refused("a reason is only given", Sound with { Why = "weighed again" });
        Refused("own place", Sound with { Replaces = Entry(Sound).Id, Why = "weighed again" });
    }

    [Fact]
    public void The_band_of_a_measured_lawn_is_left_room_and_no_more()
    {
        var (lawn, most) = (Lawns.Known(Place), 1.25 * PatchGround.Summarize(Lawns.Known(Place)).Value!.Sum(p => p.AreaHigh.Value));
        Assert.Empty(LogRules.Problems(lawn, Entry(Sound with { Area = new Area(0.999 * most) })));
        Assert.Single(LogRules.Problems(lawn, Entry(Sound with { Area = new Area(1.001 * most) })));
    }

    [Fact]
    public void A_correction_must_name_an_application_of_its_log()
    {
        var first = Entry(Sound);
        var note = new LogEntry.Note("dew") { Id = Guid.NewGuid(), At = At };
        var log = FieldLog.Of([first, note]);
        LogEntry Correction(Guid of) => new LogEntry.Applied(Sound with { Replaces = of, Why = "weighed again" }) { Id = Guid.NewGuid(), At = At };
        Assert.Empty(LogRules.ProblemsIn(log, Correction(first.Id)));
        Assert.Single(LogRules.ProblemsIn(log, Correction(note.Id)));
        Assert.Single(LogRules.ProblemsIn(FieldLog.Empty, Correction(first.Id)));
        Assert.Empty(LogRules.ProblemsIn(FieldLog.Empty, note));
    }

    [Fact]
    public void A_height_no_mower_has_is_refused()
    {
        var mowed = new LogEntry.Mowed { Id = Guid.NewGuid(), At = At, To = Depth.FromInches(3.0) };
        Assert.Empty(LogRules.Problems(Lawns.Known(Place), mowed));
        Assert.Empty(LogRules.Problems(Lawns.Known(Place), mowed with { To = null }));
        Assert.Contains("check the unit", Assert.Single(LogRules.Problems(Lawns.Known(Place), mowed with { To = Depth.FromMillimeters(3.0) })), StringComparison.Ordinal);
    }

    private static void Refused(string expected, Application record) =>
        Assert.Contains(expected, Assert.Single(Problems(record)), StringComparison.Ordinal);

    private static IReadOnlyList<string> Problems(Application record) => LogRules.Problems(Lawns.Known(Place), Entry(record));

    private static LogEntry.Applied Entry(Application record) => new(record) { Id = new Guid(1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1), At = At };
}

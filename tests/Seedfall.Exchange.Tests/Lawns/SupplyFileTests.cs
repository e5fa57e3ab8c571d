using System.Text;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Tests.Lawns;

/// <summary>The whole water supply in a lawn file: read as written, and refused with its place.</summary>
public sealed class SupplyFileTests
{
    private const string Water = """
        { "bucket": { "volume": "5 gal", "time": "60 s" },
          "pressure": { "still": "60 psi", "running": "2.5 bar", "at": "4 gpm" },
          "otherTaps": [{ "name": "garage", "flow": "4.5 gpm" }],
          "together": "8 gpm",
          "well": { "stored": "80 gal", "recovery": "3 gpm" },
          "reserved": "1 gpm",
          "household": [{ "from": "06:30", "to": "07:30", "flow": "2 gpm" }],
          "householdPerMonth": "6000 gal",
          "sets": [{ "name": "one", "patches": ["front"], "hose": { "length": "75 ft", "bore": "0.625 in" }, "nozzle": { "flow": "3 gpm", "at": "40 psi" }, "tap": "garage", "timer": "box" }],
          "timers": [{ "name": "box", "programs": 3, "startsPerDay": 4 }],
          "meter": [{ "upTo": "4000 gal", "perThousandGallons": 3.10 }, { "perThousandGallons": 7.25 }],
          "timer": true }
        """;

    [Fact]
    public void Every_part_is_read()
    {
        var water = Read(Water).Lawn!.Water!;
        Assert.Equal(new PressureTest(Pressure.FromPoundsPerSquareInch(60), Pressure.FromBars(2.5), FlowRate.FromGallonsPerMinute(4)), water.Pressure);
        Assert.Equal(new FurtherTap("garage", FlowRate.FromGallonsPerMinute(4.5)), Assert.Single(water.OtherTaps));
        Assert.Equal(8.0, water.Together!.Value.GallonsPerMinute, 12);
        Assert.Equal((80.0, 3.0), (Math.Round(water.Well!.Stored.Gallons, 9), Math.Round(water.Well.Recovery.GallonsPerMinute, 9)));
        Assert.Equal(FlowRate.FromGallonsPerMinute(1), water.Reserved);
        Assert.Equal(new HouseholdHours(new TimeOnly(6, 30), new TimeOnly(7, 30), FlowRate.FromGallonsPerMinute(2)), Assert.Single(water.Household));
        Assert.Equal(Volume.FromGallons(6000), water.HouseholdPerMonth);
        Assert.Equal(("box", 3, 4), (water.Timers[0].Name, water.Timers[0].Programs, water.Timers[0].StartsPerDay));
        Assert.Equal((Volume.FromGallons(4000), 3.10m), (water.Meter!.Steps[0].UpTo!.Value, water.Meter.Steps[0].PerThousandGallons));
        Assert.Equal((null, 7.25m), (water.Meter.Steps[1].UpTo, water.Meter.Steps[1].PerThousandGallons));
        var set = Assert.Single(water.Sets);
        Assert.Equal(new HoseRun(Length.FromFeet(75), Length.FromInches(0.625)), set.Hose);
        Assert.Equal(("garage", "box", 3.0), (set.Tap, set.Timer, Math.Round(set.Nozzle!.Flow.GallonsPerMinute, 9)));
    }

    [Fact]
    public void Prices_keep_the_digits_they_were_written_with() =>
        Assert.Contains("3.10", Encoding.UTF8.GetString(LawnFile.Write(Read(Water).Lawn!)), StringComparison.Ordinal);

    [Theory]
    [InlineData("\"60 psi\"", "60", 8, "water.pressure.still", "a pressure with its unit")]
    [InlineData("\"60 psi\"", "\"60 ft\"", 8, "water.pressure.still", "psi, bar, kPa")]
    [InlineData("\"60 psi\"", "\"0 psi\"", 8, "water.pressure.still", "above 0")]
    [InlineData("2.5 bar", "70 psi", 8, "water.pressure.running", "below the still pressure")]
    [InlineData(", \"at\": \"4 gpm\"", "", 8, "water.pressure", "both, read at the same time")]
    [InlineData("\"4.5 gpm\"", "\"0 gpm\"", 9, "water.otherTaps[0].flow", "above 0")]
    [InlineData("\"8 gpm\"", "\"12 gpm\"", 10, "water.together", "no more than the taps alone")]
    [InlineData("\"8 gpm\"", "\"3 gpm\"", 10, "water.together", "no less than the strongest")]
    [InlineData("\"80 gal\"", "\"-80 gal\"", 11, "water.well.stored", "not negative")]
    [InlineData("\"1 gpm\"", "\"9 gpm\"", 12, "water.reserved", "some is left for the lawn")]
    [InlineData("07:30", "05:30", 13, "water.household[0]", "an end after the start")]
    [InlineData("07:30", "24:00", 13, "water.household[0].to", "a time like")]
    [InlineData("0.625 in", "0 in", 15, "water.sets[0].hose.bore", "3 mm to 200 mm")]
    [InlineData("75 ft", "1700 ft", 15, "water.sets[0].hose.length", "0 m to 500 m")]
    [InlineData("\"tap\": \"garage\"", "\"tap\": \"barn\"", 15, "water.sets[0].tap", "the name of a tap: garage")]
    [InlineData("\"timer\": \"box\"", "\"timer\": \"barn\"", 15, "water.sets[0].timer", "the name of a timer: box")]
    [InlineData("\"programs\": 3", "\"programs\": 0", 16, "water.timers[0].programs", "1 to 100")]
    [InlineData("\"programs\": 3", "\"programs\": 2.5", 16, "water.timers[0].programs", "a whole number")]
    [InlineData("{ \"perThousandGallons\": 7.25 }", "{ \"upTo\": \"3000 gal\", \"perThousandGallons\": 7.25 }", 17, "water.meter[1].upTo", "no end in the last step")]
    [InlineData("3.10", "-3.10", 17, "water.meter[0].perThousandGallons", "an amount of money")]
    [InlineData("\"reserved\"", "\"reserve\"", 12, "water.reserve", "\"reserved\"")]
    public void A_fault_is_refused_with_its_place_and_what_was_expected(string was, string becomes, int line, string path, string expected)
    {
        var water = Water.Replace(was, becomes, StringComparison.Ordinal);
        Assert.NotEqual(Water, water);
        var result = Read(water);
        Assert.False(result.IsRead);
        var problem = Assert.Single(result.Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
        Assert.Equal(line, problem.Line);
    }

    private static LawnReadResult Read(string water) =>
        LawnFile.Read(Encoding.UTF8.GetBytes(LawnText.Least.Replace("\"patches\": [", $"\n  \"water\": {water},\n  \"patches\": [", StringComparison.Ordinal)), "lawn.json");
}

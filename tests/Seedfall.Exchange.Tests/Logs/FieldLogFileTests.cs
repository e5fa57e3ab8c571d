using System.Text;
using NJsonSchema;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Logs;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Tests.Logs;

public sealed class FieldLogFileTests
{
    private static readonly Lawn Lawn = Seedfall.Exchange.Demo.DemoTown.Lawns[0];

    private static readonly DateTimeOffset At = new(2026, 9, 8, 7, 30, 15, TimeSpan.FromHours(-5));

    private static readonly LogEntry[] Every =
    [
        new LogEntry.SeededDown { Id = Id(1), At = At },
        new LogEntry.FirstGreen { Id = Id(2), At = At.AddDays(8), PatchId = "front", Remark = "along the drive first" },
        new LogEntry.SoilReading(Depth.FromInches(2), Temperature.FromFahrenheit(71.5)) { Id = Id(3), At = At, HourKnown = false },
        new LogEntry.CoverSeen(Fraction.FromPercent(62), CoverJudged.Photograph) { Id = Id(4), At = At.AddDays(21), Low = Fraction.FromPercent(55), High = Fraction.FromPercent(70) },
        new LogEntry.Watered { Id = Id(7), At = At, Given = Depth.FromInches(0.1) },
        new LogEntry.Watered { Id = Id(8), At = At, PatchId = "front", Minutes = 12.0 },
        new LogEntry.Rained(Depth.FromInches(0.35)) { Id = Id(9), At = At },
        new LogEntry.FingerTest(FingerFelt.TooDry) { Id = Id(10), At = At, WetTo = Depth.FromInches(0.25) },
        new LogEntry.Mowed { Id = Id(11), At = At.AddDays(20), To = Depth.FromInches(3) },
        new LogEntry.Mowed { Id = Id(12), At = At.AddDays(24) },
        new LogEntry.Applied(Applications.Whole) { Id = Id(13), At = At },
        new LogEntry.Applied(Applications.Least with { Replaces = Id(13), Why = "the bag was weighed again" }) { Id = Id(14), At = At },
        new LogEntry.Note("dew till ten") { Id = Id(5), At = At },
        new LogEntry.Struck(Id(5), "the wrong lawn") { Id = Id(6), At = At.AddDays(1) },
    ];

    [Fact]
    public void What_was_written_reads_back_the_same()
    {
        var log = FieldLog.Of(Every);
        var bytes = FieldLogFile.Write(Lawn.Id, log);
        var read = FieldLogFile.Read(bytes, "log.json", Lawn);
        Assert.True(read.IsRead, string.Join('\n', read.Problems));
        Assert.Equivalent(log.Entries, read.Log.Entries, strict: true);
        Assert.Equal(bytes, FieldLogFile.Write(Lawn.Id, read.Log));
        Assert.All(Every, entry => Assert.Equivalent(entry, FieldLogFile.ReadEntry(FieldLogFile.WriteEntry(entry)), strict: true));
        Assert.Equal(log.Entries.Select(e => e.GetType()), read.Log.Entries.Select(e => e.GetType()));
    }

    [Theory]
    [InlineData("{ \"mowed\": { \"to\": \"30 in\" } }", "a height from 0.4 to 10 in")]
    [InlineData("{ \"applied\": { \"kind\": \"seed\", \"product\": \"tall fescue\", \"amount\": {}, \"area\": \"100 sq ft\" } }", "a weight or a volume")]
    [InlineData("{ \"applied\": { \"kind\": \"seed\", \"product\": \"tall fescue\", \"amount\": { \"mass\": \"2 lb\" }, \"area\": \"100 acre\" } }", "check the unit or the outline")]
    [InlineData("{ \"applied\": { \"kind\": \"seed\", \"product\": \"tall fescue\", \"amount\": { \"mass\": \"2 lb\" }, \"area\": \"100 sq ft\", \"replaces\": \"0192f0c4-7c1e-7b1a-9d0e-2f7d5a6b8c90\", \"why\": \"weighed again\" } }", "no application in this log")]
    [InlineData("{ \"applied\": { \"kind\": \"paint\", \"product\": \"tall fescue\", \"amount\": { \"mass\": \"2 lb\" }, \"area\": \"100 sq ft\" } }", "pesticide, fertilizer, seed, other")]
    public void Applications_and_mowings_no_one_made_are_refused(string what, string expected) => Water_no_one_gave_is_refused(what, expected);

    [Fact]
    public void Every_kind_of_entry_is_in_the_list_above() =>
        Assert.Equal(
            typeof(LogEntry).GetNestedTypes().Where(t => t.IsSubclassOf(typeof(LogEntry))).Select(t => t.Name).Order(),
            Every.Select(e => e.GetType().Name).Distinct().Order());

    [Fact]
    public async Task The_published_schema_is_the_one_the_code_makes_and_holds()
    {
        var path = Repository.PathOf("docs", "schema", "log.schema.json");
        if (Repository.AcceptGolden)
        {
            await File.WriteAllTextAsync(path, FieldLogFile.Schema(), TestContext.Current.CancellationToken);
        }

        Assert.Equal(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken), FieldLogFile.Schema());
        var schema = await JsonSchema.FromJsonAsync(FieldLogFile.Schema(), TestContext.Current.CancellationToken);
        Assert.Empty(schema.Validate(Encoding.UTF8.GetString(FieldLogFile.Write(Lawn.Id, FieldLog.Of(Every)))));
    }

    [Theory]
    [InlineData("\"at\": \"2026-09-08\"", "an instant like")]
    [InlineData("\"at\": \"2026-09-08T07:30:00-05:00\", \"patch\": \"nowhere\"", "nowhere is none of this lawn's patches")]
    [InlineData("\"at\": \"2026-09-08T07:30:00-05:00\", \"mood\": \"good\"", "unknown field")]
    public void Wrong_entries_are_refused_with_their_place(string part, string expected)
    {
        var text = "{\n  \"format\": \"seedfall-log/1\",\n  \"lawn\": \"" + Lawn.Id + "\",\n  \"entries\": [\n    { \"id\": \"" + Id(1) + "\", " + part + ", \"what\": { \"firstGreen\": {} } }\n  ]\n}";
        var read = FieldLogFile.Read(Encoding.UTF8.GetBytes(text), "log.json", Lawn);
        Assert.False(read.IsRead);
        Assert.Contains(read.Problems, p => p.Line == 5 && p.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{ \"watered\": {} }", "a depth or minutes is needed")]
    [InlineData("{ \"watered\": { \"depth\": \"0.1 in\", \"time\": \"12 min\" } }", "a depth or minutes is needed")]
    [InlineData("{ \"watered\": { \"depth\": \"10 in\" } }", "check the unit")]
    [InlineData("{ \"watered\": { \"time\": \"12 min\", \"set\": \"no such set\" } }", "is none of this lawn's sprinkler sets")]
    [InlineData("{ \"rained\": { \"depth\": \"2000 mm\" } }", "check the unit")]
    [InlineData("{ \"fingerTest\": { \"felt\": \"right\", \"wetTo\": \"12 in\" } }", "no finger reaches")]
    [InlineData("{ \"fingerTest\": { \"felt\": \"damp\" } }", "too-dry")]
    public void Water_no_one_gave_is_refused(string what, string expected)
    {
        var text = "{\"format\": \"seedfall-log/1\", \"lawn\": \"" + Lawn.Id + "\", \"entries\": [{ \"id\": \"" + Id(1) + "\", \"at\": \"2026-09-08T07:30:00-05:00\", \"what\": " + what + " }]}";
        var result = FieldLogFile.Read(Encoding.UTF8.GetBytes(text), "log.json", Lawn);
        Assert.False(result.IsRead);
        Assert.Contains(result.Problems, p => p.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("87 degC", "check the unit")]
    [InlineData("300 degF", "a soil temperature from")]
    [InlineData("68", "a temperature with its unit")]
    public void A_reading_no_soil_can_have_is_refused(string read, string expected)
    {
        var text = "{\"format\": \"seedfall-log/1\", \"lawn\": \"" + Lawn.Id + "\", \"entries\": [{ \"id\": \"" + Id(1) + "\", \"at\": \"2026-09-08T07:30:00-05:00\", \"what\": { \"soilReading\": { \"depth\": \"2 in\", \"read\": \"" + read + "\" } } }]}";
        var result = FieldLogFile.Read(Encoding.UTF8.GetBytes(text), "log.json", Lawn);
        Assert.False(result.IsRead);
        Assert.Contains(result.Problems, p => p.ToString().Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void The_log_of_another_lawn_is_refused()
    {
        var read = FieldLogFile.Read(FieldLogFile.Write("another", FieldLog.Empty), "log.json", Lawn);
        Assert.Contains("another", Assert.Single(read.Problems).ToString(), StringComparison.Ordinal);
    }



    private static Guid Id(int n) => new(n, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1);
}

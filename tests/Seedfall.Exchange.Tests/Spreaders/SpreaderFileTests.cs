using System.Text;
using NJsonSchema;
using Seedfall.Engine.Units;
using Seedfall.Exchange.Spreaders;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Planning.Materials;

namespace Seedfall.Exchange.Tests.Spreaders;

public sealed class SpreaderFileTests
{
    private static readonly DateTimeOffset At = new(2026, 9, 8, 7, 30, 15, TimeSpan.FromHours(-5));

    private static readonly KeptSpreader Every = new()
    {
        Id = "green-push",
        Name = "the green one",
        Kind = SpreaderKind.Rotary,
        Scale = new(1.0, 26.0, 0.5, letters: true),
        Swath = Length.FromFeet(7.5),
        Walk = Speed.FromMilesPerHour(2.8),
        Entries =
        [
            new SpreaderEntry.FirstFall(3.5, SpreadMaterial.FineSeed) { Id = Id(1), At = At },
            new SpreaderEntry.Run
            {
                Id = Id(2), At = At, Material = SpreadMaterial.CoarseSeed, What = "lot 26-114", Opening = 11.5, Covered = Area.FromSquareFeet(4210), Used = Mass.FromPounds(11.3),
                Swath = Length.FromFeet(8), Walk = Speed.FromMilesPerHour(3), WeighedTo = Mass.FromGrams(5), LawnId = "mill-lane", JobId = "seed-2026",
            },
            new SpreaderEntry.Run { Id = Id(3), At = At.AddDays(15), Material = SpreadMaterial.Granules, What = "12-12-12", Opening = 2.0, Covered = Area.FromSquareFeet(1000), Used = Mass.Zero },
            new SpreaderEntry.Struck(Id(3), "the gate was stuck") { Id = Id(4), At = At.AddDays(16) },
        ],
    };

    [Fact]
    public void What_was_written_reads_back_the_same()
    {
        var bytes = SpreaderFile.Write(Every);
        var read = SpreaderFile.Read(bytes, "spreader.json");
        Assert.True(read.IsRead, string.Join('\n', read.Problems));
        Assert.Equal(Every with { Entries = [] }, read.Spreader with { Entries = [] });
        Assert.Equal(Every.Entries, read.Spreader.Entries);
        Assert.Equal(bytes, SpreaderFile.Write(read.Spreader));
        Assert.All(Every.Entries, entry => Assert.Equal(entry, SpreaderFile.ReadEntry(SpreaderFile.WriteEntry(entry))));
    }

    [Fact]
    public void Every_kind_of_entry_is_in_the_list_above() =>
        Assert.Equal(
            typeof(SpreaderEntry).GetNestedTypes().Where(t => t.IsSubclassOf(typeof(SpreaderEntry))).Select(t => t.Name).Order(),
            Every.Entries.Select(e => e.GetType().Name).Distinct().Order());

    [Fact]
    public async Task The_published_schema_is_the_one_the_code_makes_and_holds()
    {
        var path = Repository.PathOf("docs", "schema", "spreader.schema.json");
        if (Repository.AcceptGolden)
        {
            await File.WriteAllTextAsync(path, SpreaderFile.Schema(), TestContext.Current.CancellationToken);
        }

        Assert.Equal(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken), SpreaderFile.Schema());
        var schema = await JsonSchema.FromJsonAsync(SpreaderFile.Schema(), TestContext.Current.CancellationToken);
        Assert.Empty(schema.Validate(Encoding.UTF8.GetString(SpreaderFile.Write(Every))));
    }

    [Theory]
    [InlineData("\"opening\": 11.5", "\"opening\": 40", "is not on the scale from A to Z")]
    [InlineData("\"opening\": 11.5", "\"opening\": \"wide\"", "a number from 0")]
    [InlineData("\"greatest\": 26", "\"greatest\": 27", "letters from A to Z")]
    [InlineData("\"used\": \"11.3 lb\"", "\"used\": \"11300 lb\"", "check amount, ground and their units")]
    [InlineData("\"step\": 0.5", "\"stop\": 0.5", "unknown field")]
    public void What_cannot_stand_is_refused_with_its_place(string was, string now, string expected)
    {
        var text = Encoding.UTF8.GetString(SpreaderFile.Write(Every));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var read = SpreaderFile.Read(Encoding.UTF8.GetBytes(text.Replace(was, now, StringComparison.Ordinal)), "spreader.json");
        Assert.False(read.IsRead);
        Assert.Contains(read.Problems, p => p.Line > 1 && p.ToString().Contains(expected, StringComparison.Ordinal));
    }

    private static Guid Id(int n) => new(n, 0, 0, new byte[8]);
}

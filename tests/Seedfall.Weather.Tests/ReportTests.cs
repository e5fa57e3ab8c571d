using System.Text.Json;
using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests;

public sealed class ReportTests
{
    [Fact]
    public void Report_survives_json()
    {
        var report = Good(Samples.GhcnAccess).Report!;
        var json = JsonSerializer.Serialize(report);
        Assert.Contains("\"Kind\":\"Temperature\"", json, StringComparison.Ordinal);
        var back = JsonSerializer.Deserialize<WeatherReport>(json)!;
        Assert.Equal(json, JsonSerializer.Serialize(back));
        Assert.Equal(report.Gaps, back.Gaps);
    }

    [Fact]
    public void Lines_say_it_plainly()
    {
        var lines = WeatherReportText.Lines(Good(Samples.GhcnAccess).Report!);
        Assert.Equal("Station  EXAMPLEVILLE, MI US", lines[0]);
        Assert.Equal("Place    42.31, -84.12, 281 m", lines[1]);
        Assert.Equal("Days     3 from 2026-09-01 to 2026-09-03, 1 of them filled", lines[2]);
        Assert.Contains("  file  GHCN-Daily CSV, 3 records", lines);
        Assert.Contains("  2026    3 days, 1 filled, 362 missing, longest run 243", lines);
        Assert.Contains("  1 short gaps (1 days) filled: temperatures in a straight line, rain 0", lines);
        Assert.All(lines, l => Assert.Equal(l.TrimEnd(), l));
    }

    [Fact]
    public void Complete_years_share_a_line()
    {
        var text = Table("date,tmax_c,tmin_c,rain_mm", new(2019, 1, 1), 365 + 366 + 365 + 100, (a, b, r) => FormattableString.Invariant($"{a},{b},{r}"));
        var lines = WeatherReportText.Lines(Good(text).Report!);
        Assert.Contains("  2019 to 2021  complete, 0 days filled", lines);
        Assert.Contains("  2022  100 days, 0 filled, 265 missing, longest run 265", lines);
    }

    [Fact]
    public void Files_carry_the_hash_of_their_bytes()
    {
        var bytes = Gzip(System.Text.Encoding.ASCII.GetBytes(Samples.UscrnDailyLine));
        var result = Good(Read(Bytes(bytes, "a.gz")));
        var file = Assert.Single(result.Report!.Files);
        Assert.Equal(bytes.Length, file.Bytes);
        Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)), file.Sha256);
        Assert.StartsWith("a.gz: USCRN daily01, 1 records, SHA-256 ", Assert.Single(result.History!.Sources), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, "f: expected a, found b")]
    [InlineData(3, 0, "f:3: expected a, found b")]
    [InlineData(3, 7, "f:3:7: expected a, found b")]
    public void Problems_print_like_a_compilers(int line, int column, string text) =>
        Assert.Equal(text, new FileProblem("f", line, column, "a", "b").ToString());
}

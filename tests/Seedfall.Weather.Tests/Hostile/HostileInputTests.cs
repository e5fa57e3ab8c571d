using System.Text;
using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests.Hostile;

/// <summary>Files that are broken, absurd or meant to do harm: a clear problem, nothing read, bounded memory.</summary>
public sealed class HostileInputTests
{
    private const long MostAllocated = 8 << 20;

    private static FileProblem RefusedWithinMemory(WeatherInput input, WeatherReadOptions? options = null)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var problem = Refused(WeatherFiles.Read([input], options));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, MostAllocated);
        return problem;
    }

    [Theory]
    [InlineData("")]
    [InlineData("date,tmax_c,tmin_c,rain_mm\n")]
    [InlineData("{\"type\": \"")]
    public void A_line_of_two_gigabytes_is_refused_after_a_few_kilobytes(string start)
    {
        var endless = new EndlessStream(Encoding.ASCII.GetBytes(start), "24.6,"u8.ToArray(), 2L << 30);
        RefusedWithinMemory(new WeatherInput("endless", 0, () => endless), new WeatherReadOptions { Limits = new WeatherReadLimits { JsonBytes = 1 << 20 } });
        Assert.InRange(endless.Given, 1, 3 << 20);
    }

    [Fact]
    public void A_long_line_after_good_ones_names_its_number()
    {
        var problem = Refused(Samples.UscrnDailyLine + "\n" + new string('1', 70_000) + "\n");
        Assert.Equal(2, problem.Line);
        Assert.Contains("65536", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Binary_content_is_refused()
    {
        var bytes = new byte[50_000];
        new Random(1).NextBytes(bytes);
        bytes[0] = 0x7F;
        Assert.Equal("a binary file", RefusedWithinMemory(Bytes(bytes)).Found);
    }

    [Fact]
    public void Binary_bytes_in_a_table_are_refused_at_their_place()
    {
        var problem = Refused(Samples.UscrnDailyLine + "\n9900\0 2026");
        Assert.Equal((2, 5), (problem.Line, problem.Column));
        Assert.Contains("0x00", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_way_to_cut_a_gzip_file_is_refused()
    {
        // The framework's own reader takes a cut file for a whole one and gives half the days.
        var text = string.Concat(Enumerable.Range(1, 28).Select(d => Samples.UscrnDay(FormattableString.Invariant($"202609{d:00}"), 20 + d % 5, 10, d % 3) + "\n"));
        var packed = Gzip(Encoding.ASCII.GetBytes(text));
        Assert.Equal(28, Good(Read(Bytes(packed))).History!.Days.Count);
        for (var length = 2; length < packed.Length; length++)
        {
            Assert.Contains("gzip", Refused(Read(Bytes(packed[..length]))).Expected, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_flipped_bit_in_a_gzip_file_is_refused_or_harmless()
    {
        var packed = Gzip(Encoding.ASCII.GetBytes(Samples.UscrnDailyLine + "\n"));
        var whole = Good(Read(Bytes(packed))).History!.Days[0];
        for (var bit = 0; bit < packed.Length * 8; bit++)
        {
            var damaged = (byte[])packed.Clone();
            damaged[bit / 8] ^= (byte)(1 << (bit % 8));
            var result = Read(Bytes(damaged));
            Assert.True(!result.IsRead || result.History.Days[0] == whole, $"bit {bit}");
        }
    }

    [Fact]
    public void Gzip_files_joined_end_to_end_are_read_whole()
    {
        byte[] joined = [.. Gzip(Encoding.ASCII.GetBytes(Samples.UscrnDailyLine + "\n")), .. Gzip(Encoding.ASCII.GetBytes(Samples.UscrnDay("20260902", 20, 10, 0) + "\n"))];
        Assert.Equal(2, Good(Read(Bytes(joined))).History!.Days.Count);
    }

    [Fact]
    public void A_bomb_of_zeros_is_refused() =>
        Assert.Equal("a binary file", RefusedWithinMemory(Bytes(Gzip(new byte[64 << 20]), "bomb.gz")).Found);

    [Fact]
    public void A_bomb_of_good_lines_stops_at_the_limit()
    {
        var line = Encoding.ASCII.GetBytes(Samples.UscrnDailyLine + "\n");
        var many = new byte[line.Length * 20_000];
        for (var i = 0; i < many.Length; i += line.Length)
        {
            line.CopyTo(many, i);
        }

        var bytes = new WeatherReadOptions { Limits = new WeatherReadLimits { FileBytes = 1 << 20 } };
        Assert.Contains("1048576", RefusedWithinMemory(Bytes(Gzip(many)), bytes).Expected, StringComparison.Ordinal);
        var total = new WeatherReadOptions { Limits = new WeatherReadLimits { TotalBytes = 1 << 20 } };
        Assert.Contains("1048576", RefusedWithinMemory(Bytes(Gzip(many)), total).Expected, StringComparison.Ordinal);
        var days = new WeatherReadOptions { Limits = new WeatherReadLimits { Days = 5_000 } };
        Assert.Equal("at most 5000 days", RefusedWithinMemory(Bytes(Gzip(many)), days).Expected);
    }

    [Theory]
    [InlineData("", "an empty file")]
    [InlineData("PK\u0003\u0004rest", "a ZIP archive: unpack it first")]
    [InlineData("<html><body>404</body></html>\n", "'<html><body>404</body></html>'")]
    [InlineData("a,b,c\n1,2,3\n", "'a,b,c'")]
    public void What_is_no_weather_file_is_named(string content, string found) => Assert.Equal(found, Refused(content).Found);

    [Fact]
    public void A_file_packed_twice_is_refused() =>
        Assert.Equal("a file packed twice: unpack it first", Refused(Read(Bytes(Gzip(Gzip(Encoding.ASCII.GetBytes(Samples.UscrnDailyLine)))))).Found);

    [Fact]
    public void More_columns_than_any_weather_has_are_refused()
    {
        var problem = Refused("date,tmax_c,tmin_c,rain_mm" + new string(',', 2000) + "\n");
        Assert.Contains("1024", problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_many_files_are_refused()
    {
        var options = new WeatherReadOptions { Limits = new WeatherReadLimits { Files = 2 } };
        Assert.Equal("at most 2 files", Refused(WeatherFiles.Read([Text("a"), Text("b"), Text("c")], options)).Expected);
        Assert.Equal("at least one weather file", Refused(Read()).Expected);
    }

    [Fact]
    public void A_stream_that_fails_is_a_problem_not_a_crash()
    {
        var problem = Refused(Read(new WeatherInput("gone", 10, () => throw new IOException("the disk is gone"))));
        Assert.Equal("the disk is gone", problem.Found);
    }

    [Fact]
    public void Nothing_from_a_file_reaches_a_terminal_raw_or_at_length()
    {
        var name = "\u001b[2J" + new string('x', 5_000);
        var result = Good($"station,date,tmax_c,tmin_c,rain_mm,{name}\n\"{name}\",2023-09-05,24.6,11.2,3.4,\n");
        Assert.All(WeatherReportText.Lines(result.Report!), l => Assert.True(l.Length < 300 && !l.Any(char.IsControl)));
        var problem = Refused($"date,tmax_c,tmin_c,rain_mm\n2023-09-05,{name},11.2,3.4\n");
        Assert.True(problem.ToString().Length < 200 && !problem.ToString().Any(char.IsControl));
    }

    [Fact]
    public void A_thousand_oddities_are_counted_not_listed()
    {
        var text = Table("date,tmax_c,tmin_c,rain_mm,wind_2m_m_s", new(2001, 1, 1), 6_000, (a, b, r) => FormattableString.Invariant($"{a},{b},{r},2"));
        var rows = text.Split('\n');
        for (var i = 1; i < 6_001; i++)
        {
            rows[i] = rows[i][..^1] + (i / 7 % 2 == 0 ? "3" : "4");
        }

        var notes = Good(string.Join('\n', rows)).Report!.Notes;
        Assert.True(notes.Count < 20);
        Assert.Contains(notes, n => n.StartsWith("And 8", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_limit_that_is_no_limit_is_a_callers_mistake(int days) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WeatherFiles.Read([Text("a")], new WeatherReadOptions { Limits = new WeatherReadLimits { Days = days } }));

    [Fact]
    public void Cancellation_stops_the_reading()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => WeatherFiles.Read([Text(Samples.UscrnDailyLine)], null, null, source.Token));
    }

    /// <summary>A start, then the same bytes over and over up to a size, none of it stored.</summary>
    private sealed class EndlessStream(byte[] start, byte[] pattern, long size) : MemoryStream
    {
        internal long Given { get; private set; }

        public override int Read(Span<byte> buffer)
        {
            var count = (int)Math.Min(buffer.Length, size - Given);
            for (var i = 0; i < count; i++, Given++)
            {
                buffer[i] = Given < start.Length ? start[Given] : pattern[Given % pattern.Length];
            }

            return count;
        }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));
    }
}

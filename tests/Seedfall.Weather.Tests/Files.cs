using System.IO.Compression;
using System.Text;

namespace Seedfall.Weather.Tests;

/// <summary>Files that exist only in memory.</summary>
internal static class Files
{
    internal static WeatherInput Text(string content, string name = "file") => Bytes(Encoding.UTF8.GetBytes(content), name);

    internal static WeatherInput Bytes(byte[] content, string name = "file") => new(name, content.Length, () => new MemoryStream(content, writable: false));

    internal static byte[] Gzip(byte[] content)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
        {
            gzip.Write(content);
        }

        return packed.ToArray();
    }

    internal static WeatherReadResult Read(params WeatherInput[] inputs) => WeatherFiles.Read(inputs);

    internal static WeatherReadResult Read(string content, WeatherReadOptions? options = null) => WeatherFiles.Read([Text(content)], options);

    /// <summary>Reads what must be readable.</summary>
    internal static WeatherReadResult Good(string content, WeatherReadOptions? options = null) => Good(Read(content, options));

    internal static WeatherReadResult Good(WeatherReadResult result)
    {
        Assert.True(result.IsRead, string.Join("\n", result.Problems));
        return result;
    }

    /// <summary>The one problem of what must be refused; nothing of it may have been read.</summary>
    internal static FileProblem Refused(WeatherReadResult result)
    {
        Assert.Null(result.History);
        Assert.Null(result.Report);
        return Assert.Single(result.Problems);
    }

    internal static FileProblem Refused(string content, WeatherReadOptions? options = null) => Refused(Read(content, options));

    /// <summary>Lines joined, a line end after each.</summary>
    internal static string Lines(params string[] lines) => string.Concat(lines.Select(l => l + "\n"));

    /// <summary>A plain table with one line a day and a yearly course of heat, rain every fourth day.</summary>
    /// <param name="header">First line.</param>
    /// <param name="first">First day.</param>
    /// <param name="days">How many.</param>
    /// <param name="row">Text after the date, from highest and lowest temperature in degC and rain in mm.</param>
    internal static string Table(string header, DateOnly first, int days, Func<double, double, double, string> row)
    {
        var text = new StringBuilder(header).Append('\n');
        for (var i = 0; i < days; i++)
        {
            var date = first.AddDays(i);
            var mid = 10.0 - 14.0 * Math.Cos(2 * Math.PI * (date.DayOfYear - 20) / 365.0);
            var (max, min) = (Math.Round(mid + 5.5 + i % 5 * 0.3, 1), Math.Round(mid - 5.5 - i % 3 * 0.4, 1));
            text.Append(FormattableString.Invariant($"{date:yyyy-MM-dd},{row(max, min, i % 4 == 0 ? 9.1 + i % 7 : 0.0)}\n"));
        }

        return text.ToString();
    }
}

using Seedfall.Weather.Csv;
using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>Separated values: which of the known tables, by header.</summary>
internal static class CsvFormat
{
    private static readonly byte[] Separators = [(byte)',', (byte)';', (byte)'\t', (byte)'|'];

    /// <param name="head">The beginning of the file.</param>
    /// <param name="isWhole">True where that is the whole file.</param>
    internal static FormatReader? Recognize(ReadOnlySpan<byte> head, bool isWhole)
    {
        if (head.TrimStart(" \t\r\n"u8).StartsWith("-BEGIN HEADER-"u8))
        {
            throw new RefusedException(1, 0, "NASA POWER data as JSON (ask the service for format=JSON)", "NASA POWER's CSV");
        }

        var header = HeaderLine(head, isWhole);
        if (header.IsEmpty)
        {
            return null;
        }

        if (GhcnLong.RecognizesRow(header))
        {
            return (lines, file, options) => GhcnLong.ReadHeaderless(lines, file, options);
        }

        var separator = Separator(header);
        using var lines = new LineReader(new MemoryStream(header.ToArray()), WeatherReadLimits.Default, _ => true);
        var csv = new CsvReader(lines, separator);
        return csv.TryRead() ? ByHeader(csv, separator) : null;
    }

    private static FormatReader? ByHeader(CsvReader header, byte separator)
    {
        if (UscrnHourlyTable.Recognizes(header))
        {
            return (lines, file, _) => UscrnHourlyTable.Read(Open(lines, file, separator), file);
        }

        if (GhcnLong.RecognizesHeader(header))
        {
            return (lines, file, options) => GhcnLong.Read(Open(lines, file, separator), file, options);
        }

        return TableColumns.From(header).IsWeather ? (lines, file, options) => ReadTable(Open(lines, file, separator), file, options) : null;
    }

    private static void ReadTable(CsvReader csv, FileDraft file, WeatherReadOptions options) =>
        DailyTable.Read(csv, file, TableColumns.From(csv), options);

    private static CsvReader Open(LineReader lines, FileDraft file, byte separator)
    {
        var csv = new CsvReader(lines, separator, comment => TableComments.Take(comment, file.Station));
        csv.TryRead();
        return csv;
    }

    private static ReadOnlySpan<byte> HeaderLine(ReadOnlySpan<byte> head, bool isWhole)
    {
        while (!head.IsEmpty)
        {
            var end = head.IndexOf((byte)'\n');
            if (end < 0 && !isWhole)
            {
                return default;
            }

            var line = (end < 0 ? head : head[..end]).Trim(" \r"u8);
            if (!line.IsEmpty && line[0] != '#')
            {
                return line;
            }

            head = end < 0 ? default : head[(end + 1)..];
        }

        return default;
    }

    private static byte Separator(ReadOnlySpan<byte> header)
    {
        var (best, most) = ((byte)',', 0);
        foreach (var separator in Separators)
        {
            var count = header.Count(separator);
            (best, most) = count > most ? (separator, count) : (best, most);
        }

        return best;
    }
}

using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>Reads the rest of a file into its draft.</summary>
internal delegate void FormatReader(LineReader lines, FileDraft file, WeatherReadOptions options);

/// <summary>Which format a file is, from its first bytes; names play no part.</summary>
internal static class FormatSniffer
{
    /// <summary>The reader for the content, or null where it is no weather file known here.</summary>
    internal static FormatReader? Recognize(LineReader lines)
    {
        var head = lines.Peek();
        var start = head.TrimStart(" \t\r\n"u8);
        if (start.StartsWith("{"u8))
        {
            return PowerJson.Read;
        }

        var first = FirstLine(start, lines.PeekIsWhole);
        return first.IsEmpty ? null : RecognizeFixed(first) ?? CsvFormat.Recognize(head, lines.PeekIsWhole);
    }

    private static FormatReader? RecognizeFixed(ReadOnlySpan<byte> first)
    {
        if (UscrnDaily.Recognizes(first))
        {
            return (lines, file, _) => UscrnDaily.Read(lines, file);
        }

        if (UscrnHourly.Recognizes(first))
        {
            return (lines, file, _) => UscrnHourly.Read(lines, file);
        }

        if (GhcnFixed.Recognizes(first))
        {
            return (lines, file, options) => GhcnFixed.Read(lines, file, options);
        }

        return null;
    }

    private static ReadOnlySpan<byte> FirstLine(ReadOnlySpan<byte> text, bool isWhole)
    {
        var end = text.IndexOf((byte)'\n');
        return end >= 0 ? text[..end].TrimEnd("\r"u8) : isWhole ? text : default;
    }
}

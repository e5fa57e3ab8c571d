using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Merging;

/// <summary>One file, opened, unpacked, recognized and read; whatever goes wrong becomes a problem.</summary>
internal sealed class FileParsing(WeatherReadOptions options, IProgress<double>? progress, long totalBytes, CancellationToken cancellation)
{
    private const string KnownFormats =
        "a weather file: USCRN daily01 or hourly02, GHCN-Daily, NASA POWER JSON, or CSV with a date, highest and lowest temperature and rain";

    private const int SniffedBytes = 1024;

    private long _packedBytes;
    private long _unpackedBytes;

    internal FileOutcome Parse(ListedInput listed, int index)
    {
        var draft = new FileDraft(listed.Input.Name, index, options.Limits);
        try
        {
            return Open(listed, draft);
        }
        catch (RefusedException e)
        {
            return new FileOutcome(Problem: new FileProblem(draft.Name, e.Line, e.Column, e.Expected, e.Found));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return new FileOutcome(Problem: new FileProblem(draft.Name, 0, 0, "a readable file", e.Message));
        }
    }

    private FileOutcome Open(ListedInput listed, FileDraft draft)
    {
        using var raw = new RawBytes(listed.Input.Open(), Progress, cancellation);
        var isPacked = raw.LooksPacked();
        using var content = isPacked ? new UnpackedBytes(raw) : (Stream)raw;
        try
        {
            using var lines = new LineReader(content, options.Limits, TakeUnpacked);
            var reader = IsBinary(lines.Peek()) ? null : FormatSniffer.Recognize(lines);
            if (reader is null)
            {
                return Unknown(listed, lines.Peek());
            }

            reader(lines, draft, options);
        }
        catch (RefusedException) when (listed.FromFolder && !isPacked && draft.Format.Length == 0)
        {
            return new FileOutcome(PassedOver: draft.Name);
        }

        return draft.Rows.Count == 0
            ? new FileOutcome(Problem: new FileProblem(draft.Name, 0, 0, "at least one day of weather", "none"))
            : new FileOutcome(draft, new WeatherFile(draft.Name, draft.Format, draft.Rows.Count, raw.Count, raw.Sha256()));
    }

    private static FileOutcome Unknown(ListedInput listed, ReadOnlySpan<byte> head) => listed.FromFolder
        ? new FileOutcome(PassedOver: listed.Input.Name)
        : new FileOutcome(Problem: new FileProblem(listed.Input.Name, 1, 0, KnownFormats, WhatItLooksLike(head)));

    private static string WhatItLooksLike(ReadOnlySpan<byte> head)
    {
        var end = head.IndexOf((byte)'\n');
        return head.IsEmpty ? "an empty file"
            : head.StartsWith("PK"u8) ? "a ZIP archive: unpack it first"
            : head.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]) ? "a file packed twice: unpack it first"
            : IsBinary(head) ? "a binary file"
            : FieldText.Quote(end > 0 ? head[..end].TrimEnd("\r"u8) : head);
    }

    private static bool IsBinary(ReadOnlySpan<byte> head)
    {
        var first = head[..Math.Min(head.Length, SniffedBytes)];
        var end = first.IndexOf((byte)'\n');
        return (end >= 0 ? first[..end] : first).IndexOfAnyInRange((byte)0, (byte)8) >= 0;
    }

    private void Progress(long bytes)
    {
        _packedBytes += bytes;
        if (bytes > 0 && totalBytes > 0)
        {
            progress?.Report(Math.Min(1.0, (double)_packedBytes / totalBytes));
        }
    }

    private bool TakeUnpacked(int bytes)
    {
        _unpackedBytes += bytes;
        return _unpackedBytes <= options.Limits.TotalBytes;
    }
}

/// <summary>A draft with its entry for the report, or a problem, or the name of a file in a folder that is no weather file.</summary>
internal sealed record FileOutcome(FileDraft? Draft = null, WeatherFile? Entry = null, FileProblem? Problem = null, string? PassedOver = null);

using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Lawns;
using Seedfall.Exchange.Logs;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Weather;

namespace Seedfall.Cli.Output;

/// <summary>Input files, read whole or refused with every problem in one line each.</summary>
internal static class InputFile
{
    private const long LargestLawnBytes = 16L << 20;

    internal static Lawn Lawn(FileInfo file)
    {
        var result = LawnFile.Read(Bytes(file), file.Name, Trade.Tables);
        return result.Lawn ?? throw new CommandException(ExitCode.BadInput, [.. result.Problems.Select(p => p.ToString())]);
    }

    internal static FieldLog Log(FileInfo file, Lawn lawn)
    {
        var result = FieldLogFile.Read(Bytes(file), file.Name, lawn);
        return result.Log ?? throw new CommandException(ExitCode.BadInput, [.. result.Problems.Select(p => p.ToString())]);
    }

    internal static WeatherReadResult Weather(IReadOnlyList<string> paths, WeatherReadOptions options, Streams streams, CancellationToken cancellation)
    {
        foreach (var path in paths.Where(path => !File.Exists(path) && !Directory.Exists(path)))
        {
            throw new CommandException(ExitCode.Unreachable, $"{path}: there is no such file or folder");
        }

        try
        {
            using var progress = new ProgressBar(streams, "reading weather");
            var result = WeatherFiles.Read(paths, options, progress, cancellation);
            return result.IsRead ? result : throw new CommandException(ExitCode.BadInput, [.. result.Problems.Select(p => p.ToString())]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CommandException(ExitCode.Unreachable, e.Message);
        }
    }

    internal static byte[] Bytes(FileInfo file)
    {
        if (!file.Exists)
        {
            throw new CommandException(ExitCode.Unreachable, $"{file}: there is no such file");
        }

        if (file.Length > LargestLawnBytes)
        {
            throw new CommandException(ExitCode.BadInput, $"{file.Name}: expected a lawn file of at most 16 MB, found {file.Length >> 20} MB");
        }

        try
        {
            return File.ReadAllBytes(file.FullName);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CommandException(ExitCode.Unreachable, $"{file}: cannot be read: {e.Message}");
        }
    }
}

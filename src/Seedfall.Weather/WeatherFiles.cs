using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather;

/// <summary>Weather files in, one checked history out. Formats are recognized by content; see docs/using/weather-files.md.</summary>
public static class WeatherFiles
{
    /// <summary>
    /// Reads files and all recognized files of folders as the weather of one place.
    /// </summary>
    /// <param name="paths">Files or folders (a folder's subfolders are not entered); at least one.</param>
    /// <param name="options">What is known beforehand; null for nothing.</param>
    /// <param name="progress">Told the share of bytes read, 0 to 1.</param>
    /// <param name="cancellation">Stops the reading with <see cref="OperationCanceledException"/>.</param>
    /// <returns>The history and its report, or every problem found; nothing is half-imported.</returns>
    public static WeatherReadResult Read(
        IReadOnlyList<string> paths,
        WeatherReadOptions? options = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(paths);
        options ??= WeatherReadOptions.Default;
        options.Limits.Require();
        var listing = PathListing.List(paths, options.Limits);
        return listing.Problems.Count > 0
            ? WeatherReadResult.Refused(listing.Problems)
            : Reading.Run(listing.Inputs, options, progress, cancellation);
    }

    /// <summary>The same from open content, as an upload gives it. Every input must be a weather file.</summary>
    public static WeatherReadResult Read(
        IReadOnlyList<WeatherInput> inputs,
        WeatherReadOptions? options = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        options ??= WeatherReadOptions.Default;
        options.Limits.Require();
        return Reading.Run([.. inputs.Select(i => new ListedInput(i, FromFolder: false))], options, progress, cancellation);
    }
}

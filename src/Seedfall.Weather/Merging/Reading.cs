using Seedfall.Weather.Input;

namespace Seedfall.Weather.Merging;

/// <summary>All files of one call, first each by itself, then together.</summary>
internal static class Reading
{
    internal static WeatherReadResult Run(
        IReadOnlyList<ListedInput> inputs, WeatherReadOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        if (inputs.Count == 0)
        {
            return Refused("(no file)", "at least one weather file", "none");
        }

        if (inputs.Count > options.Limits.Files)
        {
            return Refused("(all files)", FormattableString.Invariant($"at most {options.Limits.Files} files"), "more");
        }

        var parsing = new FileParsing(options, progress, inputs.Sum(i => i.Input.Bytes), cancellation);
        var outcomes = inputs.Select((input, i) => parsing.Parse(input, i)).ToList();
        var problems = outcomes.Where(o => o.Problem is not null).Select(o => o.Problem!).ToList();
        if (problems.Count > 0)
        {
            return WeatherReadResult.Refused(problems);
        }

        var read = outcomes.Where(o => o.Draft is not null && IsWanted(o.Draft.Station, options)).ToList();
        if (read.Count == 0)
        {
            return options.Station is { } station && outcomes.Any(o => o.Draft is not null)
                ? Refused("(all files)", $"files of station {station}", "none")
                : Refused(inputs[0].Input.Name, "a weather file among the files of the folder", "none that is known here");
        }

        var passedOver = outcomes.Where(o => o.PassedOver is not null).Select(o => o.PassedOver!).ToList();
        cancellation.ThrowIfCancellationRequested();
        var result = HistoryBuilder.Build([.. read.Select(o => o.Draft!)], [.. read.Select(o => o.Entry!)], passedOver, options);
        progress?.Report(1.0);
        return result;
    }

    private static bool IsWanted(StationDraft station, WeatherReadOptions options) =>
        options.Station is null || station.Id is null || string.Equals(station.Id, options.Station, StringComparison.OrdinalIgnoreCase);

    private static WeatherReadResult Refused(string file, string expected, string found) =>
        WeatherReadResult.Refused([new FileProblem(file, 0, 0, expected, found)]);
}

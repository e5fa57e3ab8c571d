using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seedfall.Cli.Output;
using Seedfall.Engine.Site;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall site LAWN.json [WEATHER...]</c>: sun by patch, the soil report read, the climate.</summary>
internal static class SiteCommand
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase, Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    internal static Command Make(Streams streams, TimeProvider clock)
    {
        var lawn = new Argument<FileInfo>("LAWN.json") { Description = "The lawn file." };
        var paths = new Argument<string[]>("WEATHER") { Description = "Weather files or folders of them.", Arity = ArgumentArity.ZeroOrMore };
        var (season, json, options) = (new Option<int?>("--season") { Description = "Year of the season; this year where absent." }, CommandTree.Json(), new WeatherOptions());
        var command = new Command("site", "Tell what the place gives: sun by patch, the soil report, the climate of the weather files.") { lawn, paths, season, json };
        options.AddTo(command);
        command.SetAction((parsed, cancellation) => CommandTree.Guard(streams, () =>
        {
            var known = InputFile.Lawn(parsed.GetValue(lawn)!);
            var files = parsed.GetValue(paths)!;
            var climate = files.Length == 0 ? null : ClimateFacts.Of(InputFile.Weather(files, options.Of(parsed, known.Place), streams, cancellation).History!, known.Place.LatitudeDeg < 0.0);
            var year = parsed.GetValue(season) ?? clock.GetUtcNow().Year;
            if (year is < 1950 or > 2150)
            {
                throw new CommandException(ExitCode.BadInput, $"--season must be a year from 1950 to 2150, not {year}");
            }

            Tell(known, year, climate, parsed.GetValue(json), streams);
            return Task.FromResult(ExitCode.Done);
        }));
        return command;
    }

    private static void Tell(Lawn lawn, int year, ClimateFacts? climate, bool json, Streams streams)
    {
        var suns = lawn.Patches.Select(p => (Patch: p, Figure: PatchSun.Hours(lawn.Place, p, year), Season: PatchSun.Season(lawn.Place, p, year))).ToArray();
        if (json)
        {
            streams.Results.WriteLine(JsonSerializer.Serialize(
                new { sun = suns.Select(s => new { patch = s.Patch.Id, entered = s.Patch.SunHours, reckoned = s.Figure, days = s.Season }), soil = SoilReadings.Of(lawn.Soil), climate }, Json));
            return;
        }

        foreach (var (patch, figure, season) in suns)
        {
            Line(streams, $"{patch.Name}: {(patch.SunHours is { } entered ? $"{entered.ToString("0.#", CultureInfo.InvariantCulture)} h of sun counted" : "sun not counted")}, {(figure is null ? "nothing entered of what stands around it" : $"{figure.Value.ToString("0.0", CultureInfo.InvariantCulture)} h reckoned")}");
            foreach (var day in figure is null ? Enumerable.Empty<SunExposureDay>() : season)
            {
                Line(streams, $"  {day.Date:MMM d}: {day.DirectHours:0.0} h of {day.OpenHours:0.0} h, {day.KeptShare:P0} of the light");
            }
        }

        foreach (var reading in SoilReadings.Of(lawn.Soil))
        {
            Line(streams, $"{reading.Sentence}");
        }

        Climate(climate, streams);
    }

    private static void Climate(ClimateFacts? climate, Streams streams)
    {
        if (climate?.Winters is { } winters)
        {
            Line(streams, $"Hardiness zone {winters.Zone}: {Temperature.FromCelsius(winters.MeanExtreme.Value).Fahrenheit:0.0} degF, the mean of {winters.Coldest.Count} winters' coldest nights");
        }

        foreach (var frost in new[] { climate?.SpringHardFrost, climate?.SpringFrost, climate?.AutumnFrost, climate?.AutumnHardFrost }.OfType<FrostDates>())
        {
            Line(streams, $"{frost.Median.Label}: {frost.Median.AsDate():MMM d} ({frost.Early:MMM d} to {frost.Late:MMM d}, eight years in ten)");
        }

        foreach (var advice in climate?.Grasses ?? [])
        {
            Line(streams, $"{advice.Statement}");
        }
    }

    private static void Line(Streams streams, FormattableString text) => streams.Results.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}

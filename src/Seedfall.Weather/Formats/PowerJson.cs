using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>
/// NASA POWER, daily or hourly point data as JSON. Units stand in the file and depend on the community asked for; the fill
/// value stands in the header; the clock is local solar time or UTC, as the header says. An hour's stamp is its start.
/// </summary>
internal static class PowerJson
{
    internal static void Read(LineReader lines, FileDraft file, WeatherReadOptions options)
    {
        var head = lines.Peek();
        if (head.IndexOf("\"parameter\""u8) >= 0 || head.IndexOf("POWER"u8) >= 0)
        {
            file.Format = "NASA POWER JSON";
        }

        var document = PowerDocument.Parse(lines.ReadRest(options.Limits.JsonBytes).Span, options.Limits.JsonDepth);
        file.IsAgency = true;
        file.IsHourly = document.IsHourly;
        file.Format = document.IsHourly ? "NASA POWER hourly JSON" : "NASA POWER daily JSON";
        (file.Station.LatitudeDeg, file.Station.LongitudeDeg, file.Station.ElevationM) = (document.LatitudeDeg, document.LongitudeDeg, document.ElevationM);
        file.Station.Name = document.LatitudeDeg is { } latitude && document.LongitudeDeg is { } longitude
            ? FormattableString.Invariant($"NASA POWER at {latitude:0.####}, {longitude:0.####}")
            : "NASA POWER";
        new PowerRows(document, file).Build();
    }
}

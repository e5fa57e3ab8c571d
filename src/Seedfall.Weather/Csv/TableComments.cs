using System.Globalization;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>Lines <c># key: value</c> of our own format: where the days were measured.</summary>
internal static class TableComments
{
    internal static void Take(string comment, StationDraft station)
    {
        var colon = comment.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            return;
        }

        var value = comment[(colon + 1)..].Trim();
        switch (comment[..colon].Trim().ToLowerInvariant())
        {
            case "station":
                (station.Id, station.Name) = value.Length > 0 ? (value, value) : (null, null);
                break;
            case "latitude_deg":
                station.LatitudeDeg = Number(value, -90, 90, comment);
                break;
            case "longitude_deg":
                station.LongitudeDeg = Number(value, -180, 180, comment);
                break;
            case "elevation_m":
                station.ElevationM = Number(value, -430, 9000, comment);
                break;
        }
    }

    private static double Number(string value, double low, double high, string comment) =>
        double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high
            ? number
            : throw new Input.RefusedException(1, 0, FormattableString.Invariant($"a number of {low} to {high} after the colon"), $"'#{Input.FieldText.Clean(comment, 60)}'");
}

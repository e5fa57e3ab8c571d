using System.Globalization;
using System.Text;
using System.Text.Json;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Soils;

/// <summary>One row of the answer.</summary>
internal sealed record SoilRow(
    string MapUnitKey, string MapUnitName, string ComponentKey, string Name, double? SharePct, string? Kind, string? Drainage, string? HydrologicGroup, double? SlopePct, SoilHorizon? Horizon);

/// <summary>The columns of the answer, by name.</summary>
internal sealed class SoilColumns
{
    private readonly Dictionary<string, int> _places = new(StringComparer.OrdinalIgnoreCase);

    /// <param name="names">The first row.</param>
    public SoilColumns(JsonElement names)
    {
        if (names.ValueKind != JsonValueKind.Array)
        {
            throw new RefusedException(0, 0, "a row of column names", $"a JSON {names.ValueKind}");
        }

        foreach (var name in names.EnumerateArray())
        {
            if (name.ValueKind != JsonValueKind.String || !_places.TryAdd(name.GetString()!, _places.Count))
            {
                throw new RefusedException(0, 0, "each column named once", "a column without a name, or one named twice");
            }
        }

        foreach (var needed in (string[])["mukey", "muname", "compname", "comppct_r", "hzdept_r", "hzdepb_r", "sandtotal_r", "claytotal_r"])
        {
            if (!_places.ContainsKey(needed))
            {
                throw new RefusedException(0, 0, $"the column {needed}", "a table without it");
            }
        }
    }

    /// <summary>One row of values.</summary>
    public SoilRow Row(JsonElement row)
    {
        if (row.ValueKind != JsonValueKind.Array || row.GetArrayLength() != _places.Count)
        {
            throw new RefusedException(0, 0, $"rows of {_places.Count} values", row.ValueKind == JsonValueKind.Array ? $"one of {row.GetArrayLength()}" : $"a JSON {row.ValueKind}");
        }

        var (name, share) = (Words(row, "compname") ?? "not named", Number(row, "comppct_r", 0.0, 100.0));
        return new SoilRow(
            Words(row, "mukey") ?? "", Words(row, "muname") ?? "not named", Words(row, "cokey") ?? name, name, share, Words(row, "compkind"),
            Words(row, "drainagecl"), Words(row, "hydgrp"), Number(row, "slope_r", 0.0, 1000.0), Horizon(row));
    }

    private SoilHorizon? Horizon(JsonElement row) => Number(row, "hzdept_r", 0.0, 2000.0) is { } top && Number(row, "hzdepb_r", 0.0, 2000.0) is { } bottom
        ? new SoilHorizon(
            top, bottom, Number(row, "sandtotal_r", 0.0, 100.0), Number(row, "silttotal_r", 0.0, 100.0), Number(row, "claytotal_r", 0.0, 100.0), Number(row, "om_r", 0.0, 100.0),
            Number(row, "ph1to1h2o_r", 1.0, 13.0), Number(row, "awc_r", 0.0, 1.0), Number(row, "ksat_r", 0.0, 1e5))
        : null;

    private string? Words(JsonElement row, string column) => Text(row, column) is { } text && Clean(text) is { Length: > 0 } clean ? clean : null;

    private double? Number(JsonElement row, string column, double least, double most)
    {
        if (Text(row, column) is not { Length: > 0 } text)
        {
            return null;
        }

        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most
            ? value
            : throw new RefusedException(0, 0, string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most} in the column {column}"), FieldText.Quote(Encoding.UTF8.GetBytes(text)));
    }

    private string? Text(JsonElement row, string column)
    {
        if (!_places.TryGetValue(column, out var place))
        {
            return null;
        }

        var value = row[place];
        return value.ValueKind switch
        {
            JsonValueKind.String => value.GetString(),
            JsonValueKind.Number => value.GetRawText(),
            JsonValueKind.Null => null,
            _ => throw new RefusedException(0, 0, $"a text or null in the column {column}", $"a JSON {value.ValueKind}"),
        };
    }

    private static string Clean(string text) => FieldText.Clean(text, FieldText.LongestLabel).Trim();
}

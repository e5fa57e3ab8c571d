using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>The station a table's rows belong to: from its columns, or from lines <c># station: ...</c> before the header.</summary>
internal sealed class TableStation(CsvReader csv, FileDraft file, TableColumns columns, WeatherReadOptions options)
{
    private const double MissingElevation = -999;

    private readonly HashSet<string> _others = new(StringComparer.OrdinalIgnoreCase);
    private byte[]? _id;
    private bool _placed;

    /// <summary>False for a row of another station than the one asked for; throws where a table mixes stations unasked.</summary>
    internal bool Accepts()
    {
        var field = columns.Field(ColumnRole.StationId);
        if (field >= 0 && !(_id is not null && csv[field].SequenceEqual(_id)) && !TakeId(field))
        {
            return false;
        }

        if (!_placed)
        {
            _placed = true;
            TakePlace();
        }

        return true;
    }

    /// <summary>Says which stations were there instead of the one asked for.</summary>
    internal void RequireFound()
    {
        if (options.Station is not null)
        {
            throw new RefusedException(0, 0, $"rows of station {options.Station}", _others.Count == 0 ? "none" : "only " + string.Join(", ", _others.Take(10)));
        }
    }

    private bool TakeId(int field)
    {
        var id = FieldText.Decode(csv[field]);
        if (options.Station is { } wanted && !string.Equals(id, wanted, StringComparison.OrdinalIgnoreCase))
        {
            if (_others.Count < 100)
            {
                _others.Add(id);
            }

            return false;
        }

        if (_id is not null && !string.Equals(id, file.Station.Id, StringComparison.OrdinalIgnoreCase))
        {
            throw new RefusedException(csv.Line, field + 1, $"rows of one station, {file.Station.Id} as before (or say which station to read)", $"'{id}'");
        }

        _id = csv[field].ToArray();
        file.Station.Id = id;
        return true;
    }

    private void TakePlace()
    {
        var name = columns.Field(ColumnRole.StationName);
        if (name >= 0 && !csv[name].IsEmpty)
        {
            file.Station.Name = FieldText.Decode(csv[name]);
        }

        file.Station.LatitudeDeg = Number(ColumnRole.Latitude, -90, 90) ?? file.Station.LatitudeDeg;
        file.Station.LongitudeDeg = Number(ColumnRole.Longitude, -180, 180) ?? file.Station.LongitudeDeg;
        file.Station.ElevationM = Number(ColumnRole.Elevation, MissingElevation - 1, 9000) is { } m && m > MissingElevation + 1 ? m : file.Station.ElevationM;
    }

    private double? Number(ColumnRole role, double low, double high)
    {
        var field = columns.Field(role);
        if (field < 0 || csv[field].IsEmpty)
        {
            return null;
        }

        return FieldText.TryNumber(csv[field], out var value) && value >= low && value <= high
            ? value
            : throw new RefusedException(csv.Line, field + 1, FormattableString.Invariant($"{role.ToString().ToLowerInvariant()} of {low:0} to {high:0}"), FieldText.Quote(csv[field]));
    }
}

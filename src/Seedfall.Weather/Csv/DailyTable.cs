using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>A table of days: GHCN-Daily's wide layouts, our own, and whatever names its columns in a known way.</summary>
internal sealed class DailyTable
{
    private readonly CsvReader _csv;
    private readonly FileDraft _file;
    private readonly TableColumns _columns;
    private readonly TableStation _station;
    private readonly GhcnFlags _flags;
    private readonly MultiDayRain _multiDay = new();
    private readonly ValueEvidence _seen = new();
    private readonly bool _decimalComma;

    private DailyTable(CsvReader csv, FileDraft file, TableColumns columns, WeatherReadOptions options)
    {
        (_csv, _file, _columns) = (csv, file, columns);
        _station = new TableStation(csv, file, columns, options);
        _flags = new GhcnFlags(file);
        _decimalComma = csv.Separator != ',';
    }

    /// <summary>Reads the rest of the file, whose header <paramref name="csv"/> has just given.</summary>
    internal static void Read(CsvReader csv, FileDraft file, TableColumns columns, WeatherReadOptions options)
    {
        file.Format = columns.HasAttributes ? "GHCN-Daily CSV" : "daily CSV";
        file.IsAgency = columns.HasAttributes;
        RequireColumns(columns, csv.Line);
        var table = new DailyTable(csv, file, columns, options);
        foreach (var (element, field, _) in columns.Values)
        {
            file.ColumnOf[(int)element] = field + 1;
        }

        while (csv.TryRead())
        {
            table.ReadRow();
        }

        table.Finish(options);
    }

    private static void RequireColumns(TableColumns columns, int line)
    {
        foreach (var needed in new[] { Element.TmaxC, Element.TminC, Element.RainMm })
        {
            if (!columns.Values.Exists(v => v.Element == needed))
            {
                throw new RefusedException(line, 0, $"a column for the {Elements.Name(needed)}", "none whose header says so");
            }
        }
    }

    private void ReadRow()
    {
        RequireCount();
        if (!_station.Accepts())
        {
            return;
        }

        var row = new Row { Line = _csv.Line, Hour = -1, Day = Day() };
        foreach (var (element, field, header) in _columns.Values)
        {
            ReadCell(element, field, header, ref row);
        }

        ReadMultiDay(row);
        row.WasFilled = _columns.Has(ColumnRole.Quality) && _csv[_columns.Field(ColumnRole.Quality)].SequenceEqual("filled"u8);
        _file.Add(row);
    }

    private void RequireCount()
    {
        if (_csv.Count < _columns.Count)
        {
            throw new RefusedException(
                _csv.Line, _csv.Count, FormattableString.Invariant($"{_columns.Count} fields as in the header"), FormattableString.Invariant($"{_csv.Count}: the line is cut off"));
        }

        for (var i = _columns.Count; i < _csv.Count; i++)
        {
            if (!_csv[i].IsEmpty)
            {
                throw new RefusedException(_csv.Line, i + 1, FormattableString.Invariant($"{_columns.Count} fields as in the header"), FormattableString.Invariant($"{_csv.Count}"));
            }
        }
    }

    private int Day()
    {
        var date = _columns.Field(ColumnRole.Date);
        if (date >= 0)
        {
            return DateCell.Parse(_csv[date], _csv.Line, date + 1);
        }

        var day = _columns.Field(ColumnRole.Day);
        return FieldText.TryInt(_csv[_columns.Field(ColumnRole.Year)], out var y)
            && FieldText.TryInt(_csv[_columns.Field(ColumnRole.Month)], out var m)
            && FieldText.TryInt(_csv[day], out var d)
            && FieldText.TryDate(y, m, d, out var number)
                ? number
                : throw new RefusedException(_csv.Line, day + 1, "year, month and day of a date that exists", FieldText.Quote(_csv[day]));
    }

    private void ReadCell(Element element, int field, HeaderName header, ref Row row)
    {
        var cell = CellValue.Parse(_csv[field], _decimalComma, header.Text, _csv.Line, field + 1);
        if (cell.Kind == CellKind.Missing)
        {
            return;
        }

        if (cell.Kind == CellKind.Trace && element != Element.RainMm)
        {
            throw new RefusedException(_csv.Line, field + 1, $"a number for {header.Text}", "'T', which only rain may have");
        }

        var attributes = _columns.Attributes(element);
        if (attributes >= 0 && !_flags.Accept(_csv[attributes], element, _csv.Line))
        {
            return;
        }

        if (cell.Kind == CellKind.Trace)
        {
            _file.Tally("A trace of rain taken as 0", FormattableString.Invariant($"line {_csv.Line}"));
        }

        _seen.See(element, cell);
        row.Set(element, cell.Value);
    }

    private void ReadMultiDay(in Row row)
    {
        var (rain, count) = (_columns.Field(ColumnRole.MultiDayRain), _columns.Field(ColumnRole.MultiDayCount));
        if (rain >= 0 && FieldText.TryNumber(_csv[rain], out var total))
        {
            _multiDay.See(row.Day, total, count >= 0 && FieldText.TryInt(_csv[count], out var days) ? days : 0);
        }
    }

    private void Finish(WeatherReadOptions options)
    {
        if (_file.Rows.Count == 0)
        {
            _station.RequireFound();
            return;
        }

        DateCell.Resolve(_file, _columns.Field(ColumnRole.Date) + 1);
        _multiDay.Spread(_file);
        TableUnits.Convert(_file, _columns, _seen, options);
        _flags.Note();
        if (_columns.Unused.Count > 0)
        {
            _file.Notes.Add("Columns not used: " + string.Join(", ", _columns.Unused.Take(40)) + (_columns.Unused.Count > 40 ? ", ..." : "."));
        }
    }
}

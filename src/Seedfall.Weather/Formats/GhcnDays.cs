using Seedfall.Weather.Csv;
using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>
/// GHCN-Daily values that come one element at a time, gathered into days. Units are fixed by the format: tenths of degC, of
/// mm and of m/s. Source: NOAA, readme of GHCN-Daily, section III.
/// </summary>
internal sealed class GhcnDays
{
    private const double Tenths = 10.0;

    private readonly FileDraft _file;
    private readonly GhcnFlags _flags;
    private readonly MultiDayRain _multiDay = new();
    private readonly Dictionary<int, double> _multiDayTotals = [];
    private readonly Dictionary<int, int> _multiDayCounts = [];
    private readonly Dictionary<int, int> _rowOfDay = [];
    private readonly double _windTo2M = WindHeight.FactorTo2M(WindHeight.UsualM, "AWND", 0);

    internal GhcnDays(FileDraft file, string format)
    {
        (_file, _flags) = (file, new GhcnFlags(file));
        (file.Format, file.IsAgency) = (format, true);
    }

    /// <param name="day">Day number.</param>
    /// <param name="element">Four letters.</param>
    /// <param name="value">Value in the format's unit; -9999 for missing.</param>
    /// <param name="measurement">Measurement flag or blank.</param>
    /// <param name="quality">Quality flag or blank.</param>
    /// <param name="time">Time of observation as HHMM, or empty.</param>
    /// <param name="line">Line of the file.</param>
    /// <param name="column">Where the value stands.</param>
    internal void Add(int day, ReadOnlySpan<byte> element, int value, char measurement, char quality, ReadOnlySpan<byte> time, int line, int column)
    {
        if (value == -9999 || TakeMultiDay(day, element, value, quality) || Known(element) is not { } known)
        {
            return;
        }

        ref var row = ref Row(day, line);
        if (!_flags.Accept(measurement, quality, time, known, line))
        {
            return;
        }

        var converted = known == Element.WindMs ? value / Tenths * _windTo2M : value / Tenths;
        if (row.Has(known) && Math.Abs(row[known] - converted) > 1e-9)
        {
            throw new RefusedException(
                line, column, FormattableString.Invariant($"{Elements.Name(known)} of {DateOnly.FromDayNumber(day):yyyy-MM-dd} as on line {row.Line}, {row[known]:0.#}"),
                FormattableString.Invariant($"{converted:0.#}"));
        }

        row.Set(known, converted);
        _file.Units[known] = (known switch { Element.RainMm => "tenths of mm", Element.WindMs => "tenths of m/s", _ => "tenths of degC" }, "by format");
        _file.ColumnOf[(int)known] = column;
    }

    internal void Finish()
    {
        foreach (var (day, total) in _multiDayTotals)
        {
            _multiDay.See(day, total, _multiDayCounts.GetValueOrDefault(day));
        }

        _multiDay.Spread(_file);
        _flags.Note();
        if (_file.Units.ContainsKey(Element.WindMs))
        {
            _file.Notes.Add("GHCN does not say the height of the wind: 10 m taken, brought to 2 m.");
        }
    }

    private static Element? Known(ReadOnlySpan<byte> element) =>
        element.SequenceEqual("TMAX"u8) ? Element.TmaxC
        : element.SequenceEqual("TMIN"u8) ? Element.TminC
        : element.SequenceEqual("TAVG"u8) ? Element.MeanC
        : element.SequenceEqual("PRCP"u8) ? Element.RainMm
        : element.SequenceEqual("AWND"u8) ? Element.WindMs
        : null;

    private bool TakeMultiDay(int day, ReadOnlySpan<byte> element, int value, char quality)
    {
        if (element.SequenceEqual("MDPR"u8) && quality == ' ')
        {
            _multiDayTotals[day] = value / Tenths;
            Row(day, 0);
            return true;
        }

        if (element.SequenceEqual("DAPR"u8) && quality == ' ')
        {
            _multiDayCounts[day] = value;
            return true;
        }

        return false;
    }

    private ref Row Row(int day, int line)
    {
        if (!_rowOfDay.TryGetValue(day, out var index))
        {
            index = _file.Rows.Count;
            _rowOfDay.Add(day, index);
            _file.Add(new Row { Day = day, Hour = -1, Line = line });
        }

        return ref System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_file.Rows)[index];
    }
}

using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>The series of a NASA POWER answer as rows of days or local hours, in our units.</summary>
internal sealed class PowerRows(PowerDocument document, FileDraft file)
{
    /// <summary>Parameters in order of preference for each quantity.</summary>
    private static readonly (string Parameter, Element Element)[] Known =
    [
        ("T2M_MAX", Element.TmaxC), ("T2M_MIN", Element.TminC), ("T2M", Element.MeanC), ("PRECTOTCORR", Element.RainMm), ("PRECTOT", Element.RainMm),
        ("ALLSKY_SFC_SW_DWN", Element.SolarMJ), ("RH2M", Element.HumidityMeanPct), ("WS2M", Element.WindMs), ("WS10M", Element.WindMs),
    ];

    private readonly Dictionary<int, int> _rowOfStamp = [];
    private readonly HashSet<Element> _taken = [];
    private readonly List<string> _used = [];
    private int _lastFilledDay;

    internal void Build()
    {
        var shift = HoursFromUtc();
        foreach (var (parameter, element) in Known)
        {
            if (document.Series.TryGetValue(parameter, out var series) && _taken.Add(element))
            {
                _used.Add(parameter);
                Take(parameter, series, element, shift);
            }
        }

        RequireSeries();
        NoteAll(shift);
    }

    private void Take(string parameter, PowerSeries series, Element element, int shift)
    {
        if (!document.Units.TryGetValue(parameter, out var unit))
        {
            throw new RefusedException(0, 0, $"a unit in parameters.{parameter}.units", "none");
        }

        var factor = PowerUnits.Scale(parameter, unit, document.IsHourly);
        file.Units[element] = (unit, "by the file");
        foreach (var (stamp, value, line) in series.Values)
        {
            ref var row = ref Row(stamp, shift, line);
            if (Math.Abs(value - document.Fill) > 1e-6)
            {
                row.Set(element, factor(value));
            }
            else if (element is Element.TmaxC or Element.MeanC or Element.RainMm)
            {
                _lastFilledDay = Math.Max(_lastFilledDay, row.Day);
            }
        }
    }

    private ref Row Row(int stamp, int shift, int line)
    {
        if (!_rowOfStamp.TryGetValue(stamp, out var index))
        {
            index = file.Rows.Count;
            _rowOfStamp.Add(stamp, index);
            file.Add(NewRow(stamp, shift, line));
        }

        return ref System.Runtime.InteropServices.CollectionsMarshal.AsSpan(file.Rows)[index];
    }

    private Row NewRow(int stamp, int shift, int line)
    {
        var date = document.IsHourly ? stamp / 100 : stamp;
        var hour = document.IsHourly ? stamp % 100 : 0;
        if (!FieldText.TryDate(date / 10_000, date / 100 % 100, date % 100, out var day) || hour > 23)
        {
            throw new RefusedException(line, 0, "a day or hour that exists", FormattableString.Invariant($"{stamp}"));
        }

        if (!document.IsHourly)
        {
            return new Row { Day = day, Hour = -1, Line = line };
        }

        var local = day * 24 + hour + shift;
        return new Row { Day = local / 24, Hour = (sbyte)(local % 24), Line = line };
    }

    /// <summary>Whole hours from UTC to the place's solar time; 0 where the file is in local time already.</summary>
    private int HoursFromUtc()
    {
        if (!document.IsUtc || !document.IsHourly)
        {
            return 0;
        }

        return document.LongitudeDeg is { } longitude
            ? (int)Math.Round(longitude / 15.0, MidpointRounding.AwayFromZero)
            : throw new RefusedException(0, 0, "coordinates, to turn UTC into local time", "none");
    }

    private void RequireSeries()
    {
        var needed = document.IsHourly ? new[] { Element.MeanC, Element.RainMm } : [Element.TmaxC, Element.TminC, Element.RainMm];
        var missing = needed.Where(e => !_taken.Contains(e)).Select(e => Known.First(k => k.Element == e).Parameter).ToList();
        if (missing.Count > 0)
        {
            throw new RefusedException(0, 0, "the parameters " + string.Join(", ", missing), "only " + string.Join(", ", document.Series.Keys.Take(20)));
        }
    }

    private void NoteAll(int shift)
    {
        file.Notes.Add("Not a station: means of a grid cell about 50 km wide from a reanalysis. Heat, nights and rain of one lawn differ from them.");
        if (document.IsUtc && !document.IsHourly)
        {
            file.Notes.Add(document.LongitudeDeg is { } longitude
                ? FormattableString.Invariant($"Days are UTC days, which begin about {(24 + longitude / 15.0) % 24:0} h local time: ask for time-standard=LST for the lawn's own days.")
                : "Days are UTC days, not the lawn's own: ask for time-standard=LST.");
        }

        if (shift != 0)
        {
            file.Notes.Add(FormattableString.Invariant($"UTC hours were moved by {shift:+0;-0} h to the place's solar time."));
        }

        if (document.IsHourly && !document.Series.ContainsKey("T2M_MAX"))
        {
            file.Notes.Add("Extremes are those of hourly means; the true ones lie a little farther apart.");
        }

        if (_used.Contains("WS10M"))
        {
            file.Notes.Add("Wind at 10 m was brought to 2 m.");
        }

        NoteTail();
        var unused = document.Series.Keys.Except(_used, StringComparer.Ordinal).ToList();
        if (unused.Count > 0)
        {
            file.Notes.Add("Parameters not used: " + string.Join(", ", unused.Take(40)) + ".");
        }
    }

    /// <summary>The newest days come as fill values and the months before them are revised later.</summary>
    private void NoteTail()
    {
        var (lastRow, lastWhole) = (0, 0);
        foreach (var row in file.Rows)
        {
            lastRow = Math.Max(lastRow, row.Day);
            lastWhole = row.Has(Element.RainMm) && (row.Has(Element.TmaxC) || row.Has(Element.MeanC)) ? Math.Max(lastWhole, row.Day) : lastWhole;
        }

        if (lastWhole > 0 && _lastFilledDay > lastWhole)
        {
            file.Notes.Add(FormattableString.Invariant(
                $"The last {lastRow - lastWhole} days are not published yet (fill value {document.Fill}) and were left out; the months before them are provisional and revised later: fetch them again."));
        }
    }
}

using Seedfall.Weather.Csv;
using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Formats;

/// <summary>The hourly02 product as a table with its own column names, missing values empty or as codes, without the flags.</summary>
internal static class UscrnHourlyTable
{
    private static readonly (string Name, Element Element)[] Known =
    [
        ("T_HR_AVG", Element.MeanC), ("T_MAX", Element.TmaxC), ("T_MIN", Element.TminC), ("P_CALC", Element.RainMm), ("SOLARAD", Element.SolarMJ),
        ("RH_HR_AVG", Element.HumidityMeanPct), ("SOIL_MOISTURE_5", Element.SoilMoisture5Cm), ("SOIL_TEMP_5", Element.Soil5CmC),
    ];

    internal static bool Recognizes(CsvReader header) =>
        Field(header, "LST_DATE") >= 0 && Field(header, "LST_TIME") >= 0 && Field(header, "T_HR_AVG") >= 0 && Field(header, "P_CALC") >= 0;

    internal static void Read(CsvReader csv, FileDraft file)
    {
        (file.Format, file.IsAgency, file.IsHourly) = ("USCRN hourly02 as CSV", true, true);
        var (date, time, count) = (Field(csv, "LST_DATE"), Field(csv, "LST_TIME"), csv.Count);
        var fields = Known.Select(k => (Field: Field(csv, k.Name), k.Element)).Where(f => f.Field >= 0).ToArray();
        UscrnText.NoteUnits(file, fields);
        file.Units[Element.SolarMJ] = ("W/m2", "by format");
        while (csv.TryRead())
        {
            if (csv.Count != count)
            {
                throw new RefusedException(csv.Line, 0, FormattableString.Invariant($"{count} fields as in the header"), FormattableString.Invariant($"{csv.Count}"));
            }

            if (!FieldText.TryCompactDate(csv[date], out var day))
            {
                throw new RefusedException(csv.Line, date + 1, "a date as YYYYMMDD", FieldText.Quote(csv[date]));
            }

            var row = UscrnHourly.Stamp(day, csv[time], csv.Line, time + 1);
            foreach (var (field, element) in fields)
            {
                Put(csv, field, element, ref row);
            }

            file.Add(row);
        }
    }

    private static void Put(CsvReader csv, int field, Element element, ref Row row)
    {
        if (csv[field].IsEmpty)
        {
            return;
        }

        if (!FieldText.TryNumber(csv[field], out var value))
        {
            throw new RefusedException(csv.Line, field + 1, "a number", FieldText.Quote(csv[field]));
        }

        if (!UscrnText.IsMissing(element, value))
        {
            row.Set(element, element == Element.SolarMJ ? UscrnHourly.HourSolarMJ(value) : value);
        }
    }

    private static int Field(CsvReader header, string name)
    {
        for (var i = 0; i < header.Count; i++)
        {
            if (System.Text.Ascii.Equals(header[i], name))
            {
                return i;
            }
        }

        return -1;
    }
}

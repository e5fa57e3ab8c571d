using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>Brings a table's numbers from the units they stand in to the units of <see cref="Element"/>.</summary>
internal static class TableUnits
{
    private static readonly Element[] Temperatures = [Element.TmaxC, Element.TminC, Element.MeanC, Element.Soil5CmC];

    internal static void Convert(FileDraft file, TableColumns columns, ValueEvidence seen, WeatherReadOptions options)
    {
        var facts = ValueEvidence.Of(file.Rows);
        var temperature = Temperature(columns, facts, seen, options);
        var rain = Rain(columns, facts, temperature, options);
        foreach (var (element, field, header) in columns.Values)
        {
            var scale = Array.IndexOf(Temperatures, element) >= 0 ? UnitScale.Temperature(header.Unit, temperature, header.Text, field)
                : element == Element.RainMm ? UnitScale.Rain(header.Unit, rain, header.Text, field)
                : element == Element.WindMs ? UnitScale.Wind(header, temperature.Unit, columns.HasAttributes, field, file)
                : UnitScale.Other(element, header, seen, field, file);
            Apply(file, element, scale);
        }
    }

    private static (TemperatureUnit Unit, string Why) Temperature(
        TableColumns columns, ValueEvidence.Facts facts, ValueEvidence seen, WeatherReadOptions options)
    {
        var named = columns.Values.Where(v => v.Element is Element.TmaxC or Element.TminC && v.Header.Unit != ColumnUnit.None).Select(v => v.Header).FirstOrDefault();
        if (named is null)
        {
            return options.Temperature is { } told ? (told, "as told") : UnitJudge.Temperature(facts, seen, columns.HasAttributes);
        }

        UnitJudge.RequireTemperatureFits(facts, named.Unit, named.Text);
        return (named.Unit == ColumnUnit.Fahrenheit ? TemperatureUnit.Fahrenheit : TemperatureUnit.Celsius, "by header");
    }

    private static (RainUnit Unit, string Why) Rain(
        TableColumns columns, ValueEvidence.Facts facts, (TemperatureUnit Unit, string Why) temperature, WeatherReadOptions options)
    {
        var header = columns.Values.First(v => v.Element == Element.RainMm).Header;
        if (options.Rain is { } told)
        {
            return (told, "as told");
        }

        var rain = header.Unit switch
        {
            ColumnUnit.None => UnitJudge.Rain(temperature.Unit),
            ColumnUnit.Inches => (RainUnit.Inches, "by header"),
            _ => (RainUnit.Millimeters, "by header"),
        };
        UnitJudge.RequireRainFits(facts, rain.Item1, header.Text);
        return rain;
    }

    private static void Apply(FileDraft file, Element element, UnitScale? scale)
    {
        if (scale is not null)
        {
            file.Units[element] = (scale.Unit, scale.Why);
        }

        foreach (ref var row in System.Runtime.InteropServices.CollectionsMarshal.AsSpan(file.Rows))
        {
            if (!row.Has(element))
            {
                continue;
            }

            if (scale is null)
            {
                row.Remove(element);
            }
            else if (scale.IsMissing(row[element]))
            {
                file.Tally("-99 taken as missing", FormattableString.Invariant($"line {row.Line}"));
                row.Remove(element);
            }
            else
            {
                row.Set(element, scale.Convert(row[element]));
            }
        }
    }
}

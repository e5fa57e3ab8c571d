using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>Which field of a table is what.</summary>
internal sealed class TableColumns
{
    private const int LongestHeader = 60;

    private readonly Dictionary<ColumnRole, int> _roles = [];
    private readonly int[] _attributes = Filled();

    private TableColumns(int count) => Count = count;

    internal int Count { get; }

    /// <summary>The quantities with their field's index and header, in the order of the fields.</summary>
    internal List<(Element Element, int Field, HeaderName Header)> Values { get; } = [];

    /// <summary>Headers that were not understood, or that repeat a quantity.</summary>
    internal List<string> Unused { get; } = [];

    /// <summary>True for GHCN's own layouts, where a column of flags stands beside each quantity.</summary>
    internal bool HasAttributes => Array.Exists(_attributes, a => a >= 0);

    /// <summary>True where the table has a date and temperatures or rain.</summary>
    internal bool IsWeather => Values.Exists(v => v.Element is Element.TmaxC or Element.TminC or Element.RainMm) && (Has(ColumnRole.Date) || (Has(ColumnRole.Year) && Has(ColumnRole.Month) && Has(ColumnRole.Day)));

    internal bool Has(ColumnRole role) => _roles.ContainsKey(role);

    /// <summary>Index of the field of a role; -1 where there is none.</summary>
    internal int Field(ColumnRole role) => _roles.GetValueOrDefault(role, -1);

    /// <summary>Index of the flags beside a quantity; -1 where there are none.</summary>
    internal int Attributes(Element e) => _attributes[(int)e];

    internal static TableColumns From(CsvReader header)
    {
        var columns = new TableColumns(header.Count);
        for (var i = 0; i < header.Count; i++)
        {
            columns.Take(i, HeaderName.Parse(FieldText.Clean(FieldText.Decode(header[i]), LongestHeader)));
        }

        columns.DayBesideMonth();
        return columns;
    }

    private void Take(int field, HeaderName header)
    {
        var isUsed = header.Role switch
        {
            ColumnRole.Unknown => false,
            ColumnRole.Value => TakeValue(field, header),
            ColumnRole.Attributes => TakeAttributes(field, header.Element),
            _ => _roles.TryAdd(header.Role, field),
        };
        if (!isUsed && header.Text.Length > 0 && !header.Text.EndsWith("_ATTRIBUTES", StringComparison.Ordinal))
        {
            Unused.Add(header.Text);
        }
    }

    private bool TakeValue(int field, HeaderName header)
    {
        if (Values.Exists(v => v.Element == header.Element))
        {
            return false;
        }

        Values.Add((header.Element, field, header));
        return true;
    }

    private bool TakeAttributes(int field, Element element)
    {
        _attributes[(int)element] = field;
        return true;
    }

    /// <summary>A column named "day" is the day of the month where year and month stand beside it, else the date.</summary>
    private void DayBesideMonth()
    {
        if (Has(ColumnRole.Year) && Has(ColumnRole.Month) && !Has(ColumnRole.Day) && _roles.Remove(ColumnRole.Date, out var field))
        {
            _roles[ColumnRole.Day] = field;
        }
    }

    private static int[] Filled()
    {
        var fields = new int[Elements.Count];
        Array.Fill(fields, -1);
        return fields;
    }
}

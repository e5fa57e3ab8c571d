namespace Seedfall.Weather.Merging;

/// <summary>What one file was found to hold, before anything is checked across files.</summary>
internal sealed class FileDraft(string name, int index, WeatherReadLimits limits)
{
    private readonly Dictionary<string, (int Count, string Example)> _tallies = [];

    internal string Name { get; } = name;

    internal int Index { get; } = index;

    /// <summary>Name of the format it was recognized as.</summary>
    internal string Format { get; set; } = string.Empty;

    /// <summary>True for files of a weather agency, whose rare bad value is no sign of a mistaken file.</summary>
    internal bool IsAgency { get; set; }

    internal StationDraft Station { get; } = new();

    internal List<Row> Rows { get; } = [];

    /// <summary>Unit of each quantity as it stood in the file, and how it is known.</summary>
    internal Dictionary<Element, (string Unit, string Source)> Units { get; } = [];

    /// <summary>Number of the field a quantity was read from, for problems found later.</summary>
    internal int[] ColumnOf { get; } = new int[Elements.Count];

    internal List<string> Notes { get; } = [];

    /// <summary>True where the rows are hours.</summary>
    internal bool IsHourly { get; set; }

    /// <summary>Adds a row; refused above the limit.</summary>
    internal void Add(Row row)
    {
        row.File = Index;
        var limit = row.Hour < 0 ? limits.Days : limits.Hours;
        if (Rows.Count >= limit)
        {
            throw new Input.RefusedException(row.Line, 0, FormattableString.Invariant($"at most {limit} {(row.Hour < 0 ? "days" : "hours")}"), "more");
        }

        Rows.Add(row);
    }

    /// <summary>Counts something worth one note however often it happens.</summary>
    internal void Tally(string what, string example)
    {
        var known = _tallies.GetValueOrDefault(what, (0, example));
        _tallies[what] = (known.Item1 + 1, known.Item2);
    }

    /// <summary>The notes, with one line for each thing tallied.</summary>
    internal IEnumerable<string> AllNotes() =>
        Notes.Concat(_tallies.Select(t => FormattableString.Invariant($"{t.Key}: {t.Value.Count} times, first {t.Value.Example}")));
}

/// <summary>The station as far as a file tells.</summary>
internal sealed class StationDraft
{
    internal string? Id { get; set; }

    internal string? Name { get; set; }

    internal double? LatitudeDeg { get; set; }

    internal double? LongitudeDeg { get; set; }

    internal double? ElevationM { get; set; }
}

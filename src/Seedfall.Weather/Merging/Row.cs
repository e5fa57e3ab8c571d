using System.Runtime.CompilerServices;

namespace Seedfall.Weather.Merging;

/// <summary>One row of a file: a day, or an hour of a day, with the quantities it has.</summary>
internal struct Row
{
    private Values _values;
    private ushort _present;

    /// <summary>Day number of the local day (<see cref="DateOnly.DayNumber"/>); below zero: a date still to be resolved.</summary>
    internal int Day { get; set; }

    /// <summary>Hour the reading begins at, 0 to 23; -1 for a whole day.</summary>
    internal sbyte Hour { get; set; }

    /// <summary>The day was filled by whoever wrote the file.</summary>
    internal bool WasFilled { get; set; }

    /// <summary>Index of the file in this reading.</summary>
    internal int File { get; set; }

    /// <summary>Line in the file, from 1.</summary>
    internal int Line { get; set; }

    /// <summary>True where no quantity is there.</summary>
    internal readonly bool IsEmpty => _present == 0;

    internal readonly bool Has(Element e) => (_present & (1 << (int)e)) != 0;

    /// <summary>The value; only where <see cref="Has"/>.</summary>
    internal readonly double this[Element e] => _values[(int)e];

    /// <summary>The value, or null.</summary>
    internal readonly double? Maybe(Element e) => Has(e) ? _values[(int)e] : null;

    internal void Set(Element e, double value)
    {
        _values[(int)e] = value;
        _present |= (ushort)(1 << (int)e);
    }

    internal void Remove(Element e) => _present &= (ushort)~(1 << (int)e);

    [InlineArray(Elements.Count)]
    private struct Values
    {
        private double _first;
    }
}

namespace Seedfall.Weather.Merging;

/// <summary>
/// Values no weather has, and lowest temperatures above highest. A few in a long file are taken as missing and said; more
/// than that, or any in a short file, and the file is refused: then the unit or the column is wrong, not a sensor.
/// </summary>
internal static class RangeCheck
{
    private const int RowsPerBadValue = 500;
    private const int AgencyAllowance = 3;

    internal static void Clean(FileDraft file, ProblemList problems)
    {
        var bad = new List<(int Row, Element Element)>();
        var rows = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(file.Rows);
        for (var i = 0; i < rows.Length; i++)
        {
            Collect(rows[i], i, bad);
        }

        if (bad.Count > Allowance(file))
        {
            foreach (var (row, element) in bad)
            {
                problems.Add(file, rows[row].Line, file.ColumnOf[(int)element], Expected(rows[row], element), Found(rows[row], element));
            }

            return;
        }

        foreach (var (row, element) in bad)
        {
            Drop(file, ref rows[row], element);
        }
    }

    private static int Allowance(FileDraft file) => Math.Max(file.IsAgency ? AgencyAllowance : 0, file.Rows.Count / RowsPerBadValue);

    private static void Collect(in Row row, int index, List<(int Row, Element Element)> bad)
    {
        for (var e = 0; e < Elements.Count; e++)
        {
            if (row.Has((Element)e) && !Elements.IsPlausible((Element)e, row[(Element)e]))
            {
                bad.Add((index, (Element)e));
            }
        }

        if (IsCrossed(row) && Elements.IsPlausible(Element.TmaxC, row[Element.TmaxC]) && Elements.IsPlausible(Element.TminC, row[Element.TminC]))
        {
            bad.Add((index, Element.TminC));
        }
    }

    private static bool IsCrossed(in Row row) => row.Has(Element.TmaxC) && row.Has(Element.TminC) && row[Element.TminC] > row[Element.TmaxC];

    private static string Expected(in Row row, Element e) => e == Element.TminC && IsCrossed(row)
        ? FormattableString.Invariant($"a lowest temperature not above the highest, {row[Element.TmaxC]:0.##} degC")
        : $"{Elements.Name(e)} of {Elements.Range(e)}";

    private static string Found(in Row row, Element e) => FormattableString.Invariant($"{row[e]:0.###} {Elements.Unit(e)}");

    private static void Drop(FileDraft file, ref Row row, Element e)
    {
        var example = FormattableString.Invariant($"line {row.Line}, {row[e]:0.###} {Elements.Unit(e)}");
        if (e == Element.TminC && IsCrossed(row))
        {
            file.Tally("lowest temperature above the highest, both left out", example);
            row.Remove(Element.TmaxC);
        }
        else
        {
            file.Tally($"{Elements.Name(e)} outside {Elements.Range(e)} left out", example);
        }

        row.Remove(e);
    }
}

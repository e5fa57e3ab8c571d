using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>
/// Dates of a table. Year first (2023-09-05, 2023/09/05, 20230905) is taken at once. Year last (9/5/2023, as spreadsheets
/// write it) is kept open until the whole column shows whether day or month comes first.
/// </summary>
internal static class DateCell
{
    /// <summary>The day number, or a number below zero for a date whose order is still open.</summary>
    internal static int Parse(ReadOnlySpan<byte> cell, int line, int column)
    {
        var text = cell.Trim(" \t"u8);
        if (FieldText.TryCompactDate(text, out var day))
        {
            return day;
        }

        var date = WithoutMidnight(text, line, column);
        Span<Range> room = stackalloc Range[4];
        if (TrySplit(date, room) && TryParts(date, room, out var a, out var b, out var c))
        {
            if (date[room[0]].Length == 4 && FieldText.TryDate(a, b, c, out day))
            {
                return day;
            }

            if (date[room[2]].Length == 4 && a is >= 1 and <= 31 && b is >= 1 and <= 31 && c is >= 1700 and <= 2200)
            {
                return -(c * 10_000 + a * 100 + b);
            }
        }

        throw new RefusedException(line, column, "a date that exists, as YYYY-MM-DD", FieldText.Quote(cell));
    }

    /// <summary>Settles the open dates of a file: a number above 12 shows which part is the day.</summary>
    internal static void Resolve(FileDraft file, int column)
    {
        var rows = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(file.Rows);
        var (firstIsDay, secondIsDay, open) = (false, false, false);
        foreach (ref readonly var row in rows)
        {
            open |= row.Day < 0;
            firstIsDay |= row.Day < 0 && -row.Day / 100 % 100 > 12;
            secondIsDay |= row.Day < 0 && -row.Day % 100 > 12;
        }

        if (!open)
        {
            return;
        }

        if (firstIsDay == secondIsDay)
        {
            throw new RefusedException(rows[0].Line, column, "dates as YYYY-MM-DD", "dates in which day and month cannot be told apart");
        }

        foreach (ref var row in rows)
        {
            row.Day = row.Day < 0 ? Settle(-row.Day, firstIsDay, row.Line, column) : row.Day;
        }

        file.Notes.Add($"Dates are written {(firstIsDay ? "day first" : "month first")}, as a day above 12 shows.");
    }

    private static int Settle(int open, bool firstIsDay, int line, int column)
    {
        var (year, a, b) = (open / 10_000, open / 100 % 100, open % 100);
        return FieldText.TryDate(year, firstIsDay ? b : a, firstIsDay ? a : b, out var day)
            ? day
            : throw new RefusedException(line, column, "a date that exists", FormattableString.Invariant($"{a}/{b}/{year}"));
    }

    /// <summary>Takes a time of midnight away; any other time means hours, which a daily table does not hold.</summary>
    private static ReadOnlySpan<byte> WithoutMidnight(ReadOnlySpan<byte> text, int line, int column)
    {
        var at = text.IndexOfAny((byte)'T', (byte)' ');
        if (at < 0)
        {
            return text;
        }

        if (text[at..].IndexOfAnyInRange((byte)'1', (byte)'9') >= 0)
        {
            throw new RefusedException(line, column, "one row a day, dates without a time", FieldText.Quote(text));
        }

        return text[..at];
    }

    private static bool TrySplit(ReadOnlySpan<byte> date, Span<Range> room)
    {
        var separator = date.IndexOfAny("-/."u8);
        return separator > 0 && date.Split(date[separator], room) == 3;
    }

    private static int Split(this ReadOnlySpan<byte> date, byte separator, Span<Range> room)
    {
        var (count, start) = (0, 0);
        for (var i = 0; i <= date.Length && count < room.Length; i++)
        {
            if (i == date.Length || date[i] == separator)
            {
                room[count++] = start..i;
                start = i + 1;
            }
        }

        return count;
    }

    private static bool TryParts(ReadOnlySpan<byte> date, Span<Range> room, out int a, out int b, out int c)
    {
        (b, c) = (0, 0);
        return FieldText.TryInt(date[room[0]], out a) && FieldText.TryInt(date[room[1]], out b) && FieldText.TryInt(date[room[2]], out c);
    }
}

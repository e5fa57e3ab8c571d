using System.Globalization;
using System.Text;
using Seedfall.Planning.Timing;

namespace Seedfall.Exchange.Paper.Parts;

/// <summary>A cover seen, on the cover curve.</summary>
public sealed record SeenCover(DateOnly Date, double Cover);

/// <summary>Measures of the drawing of a cover forecast: days across, cover up.</summary>
public sealed class CoverCurve
{
    public const double Width = 360.0;
    public const double Height = 224.0;
    public const double Left = 46.0;
    public const double Right = Width - 10.0;
    public const double Top = 14.0;
    public const double Bottom = Height - 28.0;
    private readonly DateOnly _from;
    private readonly int _span;

    /// <summary>A drawing over the days of a forecast; at least two of them.</summary>
    public CoverCurve(IReadOnlyList<CoverFanDay> days)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(days.Count, 2, nameof(days));
        _from = days.Min(day => day.Date);
        _span = Math.Max(1, days.Max(day => day.Date).DayNumber - _from.DayNumber);
    }

    public double X(DateOnly date) => Left + ((Right - Left) * Math.Clamp(date.DayNumber - _from.DayNumber, 0, _span) / _span);

    public static double Y(double cover) => Bottom - (Math.Clamp(cover, 0.0, 1.0) * (Bottom - Top));

    /// <summary>Points of a line, thinned to about one for every two days.</summary>
    public string Line(IReadOnlyList<CoverFanDay> days, Func<CoverFanDay, double> value) =>
        Joined(Thinned(days).Select(d => (X(d.Date), Y(value(d)))));

    /// <summary>The outline of the band between the tenths.</summary>
    public string Band(IReadOnlyList<CoverFanDay> days)
    {
        var thinned = Thinned(days).ToList();
        return Joined([.. thinned.Select(d => (X(d.Date), Y(d.P90))), .. Enumerable.Reverse(thinned).Select(d => (X(d.Date), Y(d.P10)))]);
    }

    /// <summary>Days after seed-down worth a mark on the axis: every fourth week.</summary>
    public IEnumerable<(DateOnly Date, string Text)> Marks() =>
        Enumerable.Range(0, (_span / 28) + 1).Select(i => (_from.AddDays(28 * i), i == 0 ? Wording.Short(_from) : string.Create(CultureInfo.InvariantCulture, $"{4 * i} wk")));

    private static IEnumerable<CoverFanDay> Thinned(IReadOnlyList<CoverFanDay> days) => days.Where((_, i) => i % 2 == 0 || i == days.Count - 1);

    private static string Joined(IEnumerable<(double X, double Y)> points)
    {
        var text = new StringBuilder();
        foreach (var (x, y) in points)
        {
            text.Append(text.Length > 0 ? " " : "").Append(Ribbon.RibbonFrame.N(x)).Append(',').Append(Ribbon.RibbonFrame.N(y));
        }

        return text.ToString();
    }
}

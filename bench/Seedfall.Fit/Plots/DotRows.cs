using System.Globalization;

namespace Seedfall.Fit.Plots;

/// <summary>One value of a row.</summary>
internal sealed record Dot(Mark Mark, double Value, double? Reach = null);

/// <summary>A chart of named rows, several marks on each.</summary>
internal static class DotRows
{
    private const int RowHeight = 21;
    private const int Top = 74;
    private const double Apart = 3.6;

    /// <summary>Draws the rows from the top down; a null name draws a rule across.</summary>
    internal static void Save(
        string file, string title, string description, IReadOnlyList<(Mark Mark, string Name)> legend, IReadOnlyList<(string? Name, IReadOnlyList<Dot> Dots)> rows, Axis values, double step, Func<double, string> label, string unit)
    {
        var bottom = Top + (RowHeight * rows.Count);
        var sheet = new Sheet(820, bottom + 52, title, description);
        sheet.Legend(16, 50, legend);
        foreach (var value in values.Every(step))
        {
            sheet.Line(values.At(value), Top - 8, values.At(value), bottom, width: 0.7);
            sheet.Text(values.At(value), bottom + 18, label(value), "middle");
        }

        sheet.Text(values.To, bottom + 38, unit, "end");
        for (var i = 0; i < rows.Count; i++)
        {
            var y = Top + (RowHeight * i) + 6;
            if (rows[i].Name is not { } name)
            {
                sheet.Line(16, y, values.To, y, Sheet.Ink);
                continue;
            }

            sheet.Text(values.From - 12, y + 4, name, "end");
            for (var k = 0; k < rows[i].Dots.Count; k++)
            {
                // A little apart, so that equal values do not hide each other.
                var dot = rows[i].Dots[k];
                var at = y + (Apart * ((0.5 * (rows[i].Dots.Count - 1)) - k));
                if (dot.Reach is { } reach)
                {
                    sheet.Line(values.At(Math.Max(values.Low, dot.Value - reach)), at, values.At(Math.Min(values.High, dot.Value + reach)), at, dot.Mark.Color, 1.6);
                }

                sheet.Put(dot.Mark, values.At(dot.Value), at);
            }
        }

        sheet.Save(file);
    }

    /// <summary>A station's folder name as words.</summary>
    internal static string Words(string station) => station.Replace('_', ' ');

    internal static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * share:0} %");
}

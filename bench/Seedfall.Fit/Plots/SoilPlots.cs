using System.Globalization;
using Seedfall.Engine.Validation;

namespace Seedfall.Fit.Plots;

/// <summary>Pictures of the soil temperature section.</summary>
internal static class SoilPlots
{
    private static readonly (Mark Mark, string Name)[] Methods =
    [
        (new Mark(Shape.Circle, Sheet.Spruce), SoilScoreMethods.Product),
        (new Mark(Shape.Circle, Sheet.Soil, Filled: false), SoilScoreMethods.Column),
        (new Mark(Shape.Diamond, Sheet.Straw), SoilScoreMethods.Regression),
        (new Mark(Shape.Square, Sheet.Pencil), SoilScoreMethods.Air7),
        (new Mark(Shape.Square, Sheet.Pencil, Filled: false), SoilScoreMethods.Climatology),
    ];

    internal static void ByStation(string file, IReadOnlyList<StationOutcome> outcomes)
    {
        IReadOnlyList<Dot> Dots(Func<string, ErrorSummary?> errors) => [.. Methods.Reverse().Where(m => errors(m.Name) is not null).Select(m => new Dot(m.Mark, errors(m.Name)!.Rmse))];
        DotRows.Save(
            file,
            "Error of the soil temperature at 5 cm, each station left out of the fit",
            "Root mean square error by station and method, August to November.",
            Methods,
            [
                .. outcomes.OrderBy(o => o.Methods[SoilScoreMethods.Product].Summary()!.Rmse).Select(o => ((string?)DotRows.Words(o.Station), Dots(m => o.Methods[m].Summary()))),
                (null, []),
                ("all stations", Dots(m => ValidationPage.Merge(outcomes.Select(o => o.Methods[m])))),
            ],
            new Axis(0.5, 3.0, 230, 790),
            0.5,
            v => v.ToString("0.0", CultureInfo.InvariantCulture),
            "root mean square error, degC");
    }

    /// <summary>Days by measured and computed temperature, a cell per degree, darker where there are more.</summary>
    internal static void Density(string file, IReadOnlyList<StationOutcome> outcomes)
    {
        const int Low = -2, High = 36;
        var counts = new int[High - Low, High - Low];
        foreach (var day in outcomes.SelectMany(o => o.Days))
        {
            var (x, y) = ((int)Math.Floor(day.MeasuredC) - Low, (int)Math.Floor(day.ComputedC) - Low);
            if (x >= 0 && y >= 0 && x < High - Low && y < High - Low)
            {
                counts[x, y]++;
            }
        }

        var sheet = new Sheet(560, 560, "Computed and measured daily mean at 5 cm", "Days by measured and computed soil temperature in cells of one degree; darker cells hold more days.");
        var (across, up) = (new Axis(Low, High, 64, 536), new Axis(Low, High, 500, 60));
        Grid(sheet, across, up, 5.0, v => v.ToString("0", CultureInfo.InvariantCulture));
        var most = Math.Log(1.0 + counts.Cast<int>().Max());
        for (var x = 0; x < High - Low; x++)
        {
            for (var y = 0; y < High - Low; y++)
            {
                if (counts[x, y] > 0)
                {
                    sheet.Box(across.At(x + Low), up.At(y + Low + 1), across.At(1) - across.At(0), up.At(0) - up.At(1), Sheet.Spruce, 0.08 + (0.92 * Math.Log(1.0 + counts[x, y]) / most));
                }
            }
        }

        sheet.Line(across.From, up.From, across.To, up.To, Sheet.Straw, 1.6);
        sheet.Text(536, 540, "measured, degC", "end");
        sheet.Text(64, 50, "computed, degC");
        sheet.Save(file);
    }

    /// <summary>Bias and error by half-month.</summary>
    internal static void BySeason(string file, IReadOnlyList<StationOutcome> outcomes)
    {
        var halves = outcomes.SelectMany(o => o.Days).GroupBy(d => (d.Date.Month, d.Date.Day > 15)).OrderBy(g => g.Key)
            .Select(g => (g.Key, Error: Math.Sqrt(g.Average(d => Math.Pow(d.ComputedC - d.MeasuredC, 2.0))), Bias: g.Average(d => d.ComputedC - d.MeasuredC))).ToList();
        var sheet = new Sheet(560, 330, "Error of the product through the season", "Root mean square error and bias by half-month.");
        var (across, up) = (new Axis(0, halves.Count, 64, 536), new Axis(-0.5, 1.5, 270, 60));
        foreach (var value in up.Every(0.5))
        {
            sheet.Line(across.From, up.At(value), across.To, up.At(value), value == 0.0 ? Sheet.Ink : Sheet.Pencil, 0.7);
            sheet.Text(across.From - 8, up.At(value) + 4, value.ToString("0.0", CultureInfo.InvariantCulture), "end");
        }

        var (error, bias) = (new Mark(Shape.Circle, Sheet.Spruce), new Mark(Shape.Diamond, Sheet.Straw));
        sheet.Legend(64, 48, (error, "root mean square error"), (bias, "bias, computed less measured"));
        sheet.Path(halves.Select((h, i) => (across.At(i + 0.5), up.At(h.Error))), Sheet.Spruce);
        sheet.Path(halves.Select((h, i) => (across.At(i + 0.5), up.At(h.Bias))), Sheet.Straw);
        for (var i = 0; i < halves.Count; i++)
        {
            sheet.Put(error, across.At(i + 0.5), up.At(halves[i].Error));
            sheet.Put(bias, across.At(i + 0.5), up.At(halves[i].Bias));
            sheet.Text(across.At(i + 0.5), 290, new DateOnly(2001, halves[i].Key.Month, halves[i].Key.Item2 ? 16 : 1).ToString("MMM d", CultureInfo.InvariantCulture), "middle", 12);
        }

        sheet.Text(536, 315, "degC, from the day named", "end");
        sheet.Save(file);
    }

    /// <summary>Stated chance of a central interval beside how often the date fell into it.</summary>
    internal static void Reliability(string file, IReadOnlyList<StationOutcome> outcomes)
    {
        double[] stated = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
        (double F, string Color, Shape Shape)[] drawn = [(70, Sheet.Pencil, Shape.Square), (65, Sheet.Straw, Shape.Diamond), (60, Sheet.Spruce, Shape.Circle), (55, Sheet.Soil, Shape.Square)];
        var sheet = new Sheet(560, 580, "Crossing dates: how often they fell into the stated interval", "Stated chance of central intervals of the crossing date, forecast on 1 August, beside the share of seasons that fell into them.");
        var (across, up) = (new Axis(0, 1, 64, 536), new Axis(0, 1, 520, 72));
        Grid(sheet, across, up, 0.2, DotRows.Percent);
        sheet.Line(across.From, up.From, across.To, up.To, Sheet.Ink, 1.0, "4 4");
        sheet.Legend(64, 50, drawn.Select(d => (new Mark(d.Shape, d.Color), string.Create(CultureInfo.InvariantCulture, $"{d.F:0} degF"))));
        var errors = CrossingErrors.Of(outcomes).ToDictionary(c => c.ThresholdF, c => c.Product.Rmse);
        foreach (var (threshold, color, shape) in drawn)
        {
            var forecasts = outcomes.SelectMany(o => o.ForecastsByIssueMonth[8]).Where(f => f.ThresholdF == threshold).Select(f => (f.Observed, Chances: new DressedEnsemble(f.Members, errors[threshold]))).ToList();
            var points = stated.Select(s => (across.At(s), up.At(forecasts.Average(f => f.Chances.Holds(f.Observed, s) ? 1.0 : 0.0)))).ToList();
            sheet.Path(points, color, 1.4);
            foreach (var (x, y) in points)
            {
                sheet.Put(new Mark(shape, color), x, y);
            }
        }

        sheet.Text(536, 560, "stated", "end");
        sheet.Text(64, 66, "happened", size: 12);
        sheet.Save(file);
    }

    private static void Grid(Sheet sheet, Axis across, Axis up, double step, Func<double, string> label)
    {
        foreach (var value in across.Every(step))
        {
            sheet.Line(across.At(value), up.From, across.At(value), up.To, width: 0.6);
            sheet.Text(across.At(value), up.From + 18, label(value), "middle");
        }

        foreach (var value in up.Every(step))
        {
            sheet.Line(across.From, up.At(value), across.To, up.At(value), width: 0.6);
            sheet.Text(across.From - 8, up.At(value) + 4, label(value), "end");
        }
    }
}

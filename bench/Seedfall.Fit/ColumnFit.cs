using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>
/// Calibration of the column by damped Gauss-Newton steps (Levenberg 1944, Marquardt 1963): square error over August to
/// November of every few seasons, plus a pull toward textbook values so that numbers the data cannot tell stay there.
/// Parameters are scaled to their bounds and held inside them. The sums are kept by station, so the fit without a station
/// costs one more step and no run.
/// </summary>
internal sealed class ColumnFit
{
    private const double TextbookPull = 0.01;
    private const double DifferenceStep = 0.02;
    private const double LargestStep = 0.25;

    private static readonly int Count = HeatParameterBounds.All.Count;
    private static readonly double[] Textbook = Unit(HeatParameterBounds.ToVector(HeatParameters.Textbook));

    private readonly List<(string Station, Season Season)> _seasons = [];
    private Dictionary<string, Sums> _sums = [];

    /// <summary>Twelve months to November of every <paramref name="everyYears"/>th year, run to an optimum over all stations.</summary>
    internal ColumnFit(IEnumerable<StationWeather> stations, int everyYears, int iterations)
    {
        foreach (var station in stations)
        {
            var history = new WeatherHistory(station.Place, station.Name, station.Days, [], []);
            foreach (var year in history.Years.Where(y => y % everyYears == 0))
            {
                if (history.Span(new DateOnly(year - 1, 12, 1), new DateOnly(year, 11, 30)) is { } span && span.Any(StationWeather.Scored))
                {
                    _seasons.Add((station.Name, new Season(station, [.. span])));
                }
            }
        }

        Best = Textbook;
        for (var i = 0; i < iterations; i++)
        {
            Linearize();
            Console.WriteLine(FormattableString.Invariant($"column, iteration {i}: rmse {Math.Sqrt(_sums.Values.Sum(s => s.Square) / _sums.Values.Sum(s => s.Rows)):F4}"));
            Best = Stepped(null, i == 0 ? LargestStep : 1.0);
        }

        Linearize();
        Console.WriteLine(FormattableString.Invariant($"column, end: rmse {Math.Sqrt(_sums.Values.Sum(s => s.Square) / _sums.Values.Sum(s => s.Rows)):F4} over {_seasons.Count} seasons"));
    }

    private double[] Best { get; set; }

    /// <summary>The parameters fitted without a station; null for all.</summary>
    internal HeatParameters Without(string? station) => Parameters(station is null ? Best : Stepped(station, 1.0));

    private void Linearize()
    {
        _sums = [];
        foreach (var (station, season) in _seasons)
        {
            if (!_sums.TryGetValue(station, out var sums))
            {
                _sums[station] = sums = new Sums();
            }

            var here = season.Run(Parameters(Best));
            var columns = new double[Count][];
            for (var j = 0; j < Count; j++)
            {
                var moved = (double[])Best.Clone();
                var step = moved[j] > 0.5 ? -DifferenceStep : DifferenceStep;
                moved[j] += step;
                var there = season.Run(Parameters(moved));
                columns[j] = [.. there.Zip(here, (a, b) => (a - b) / step)];
            }

            sums.Add(columns, [.. season.Measured.Zip(here, (m, p) => m - p)]);
        }
    }

    /// <summary>One Gauss-Newton step from the best point, without a station, each coordinate at most <paramref name="limit"/>.</summary>
    private double[] Stepped(string? without, double limit)
    {
        var used = _sums.Where(s => s.Key != without).Select(s => s.Value).ToList();
        var rows = used.Sum(s => s.Rows);
        var free = Enumerable.Range(0, Count).ToList();
        while (true)
        {
            var step = Solve(used, rows, free);
            var outside = free.Where((j, k) => Best[j] + step[k] is < -1e-9 or > 1.0 + 1e-9 && (Best[j] is <= 0.0 or >= 1.0)).ToList();
            if (outside.Count == 0)
            {
                var moved = (double[])Best.Clone();
                for (var k = 0; k < free.Count; k++)
                {
                    moved[free[k]] = Math.Clamp(moved[free[k]] + Math.Clamp(step[k], -limit, limit), 0.0, 1.0);
                }

                return moved;
            }

            free.RemoveAll(outside.Contains);
        }
    }

    private double[] Solve(List<Sums> used, int rows, List<int> free)
    {
        var matrix = new double[free.Count, free.Count];
        var right = new double[free.Count];
        for (var a = 0; a < free.Count; a++)
        {
            right[a] = (used.Sum(s => s.Right[free[a]]) / rows) + (TextbookPull * (Textbook[free[a]] - Best[free[a]]));
            for (var b = 0; b < free.Count; b++)
            {
                matrix[a, b] = used.Sum(s => s.Products[free[a], free[b]]) / rows;
            }

            matrix[a, a] += TextbookPull;
        }

        return LinearSystem.SolvePositive(matrix, right);
    }

    private static double[] Unit(double[] values) =>
        [.. values.Select((v, i) => (v - HeatParameterBounds.All[i].Low) / (HeatParameterBounds.All[i].High - HeatParameterBounds.All[i].Low))];

    private static HeatParameters Parameters(double[] unit) =>
        HeatParameterBounds.FromVector([.. unit.Select((u, i) => HeatParameterBounds.All[i].Low + (u * (HeatParameterBounds.All[i].High - HeatParameterBounds.All[i].Low)))]);

    /// <summary>Normal equations of one station at the best point.</summary>
    private sealed class Sums
    {
        internal double[,] Products { get; } = new double[Count, Count];

        internal double[] Right { get; } = new double[Count];

        internal double Square { get; private set; }

        internal int Rows { get; private set; }

        internal void Add(double[][] columns, double[] residuals)
        {
            for (var r = 0; r < residuals.Length; r++)
            {
                Square += residuals[r] * residuals[r];
                for (var a = 0; a < Count; a++)
                {
                    Right[a] += columns[a][r] * residuals[r];
                    for (var b = 0; b < Count; b++)
                    {
                        Products[a, b] += columns[a][r] * columns[b][r];
                    }
                }
            }

            Rows += residuals.Length;
        }
    }

    private sealed class Season(StationWeather station, WeatherDay[] days)
    {
        private readonly ColumnForcing _forcing = ColumnForcing.FromDaily(days, station.Place);
        private readonly double[] _predicted = new double[days.Length];

        internal double[] Measured { get; } = [.. days.Where(StationWeather.Scored).Select(d => d.Soil5CmC!.Value)];

        /// <summary>The column's daily means on the measured days.</summary>
        internal double[] Run(HeatParameters parameters)
        {
            ColumnRun.DailyMeanC(_forcing, days, station.Place, station.Climate, SoilTempSite.Reference, parameters, _predicted);
            return [.. _predicted.Where((_, d) => StationWeather.Scored(days[d]))];
        }
    }
}

using System.Globalization;
using System.Text.Json;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;
using Seedfall.Fit;

// Fits the constants of soil temperature and writes them with their leave-one-station-out errors.
//   dotnet run -c Release --project bench/Seedfall.Fit -- [STATIONS_DIR] [--date YYYY-MM-DD] [--keep-column]
// Writes data/soil-heat.json and docs/validation/soil-left-out.json; some minutes on one core.
// --keep-column takes the column's numbers from the present data/soil-heat.json for every fit: seconds, for trying
// features; its errors are then not left out for the column.
var folder = args.FirstOrDefault(a => !a.StartsWith('-') && Directory.Exists(a))
    ?? Path.Combine(Environment.GetEnvironmentVariable("SEEDFALL_DATA") ?? throw new InvalidOperationException("SEEDFALL_DATA is not set and no folder was given"), "uscrn_daily");
var dateAt = Array.IndexOf(args, "--date");
var date = dateAt >= 0 ? DateOnly.ParseExact(args[dateAt + 1], "yyyy-MM-dd", CultureInfo.InvariantCulture) : DateOnly.FromDateTime(DateTime.UtcNow);
var kept = args.Contains("--keep-column") ? SoilHeatConstants.Shipped.Column : null;

var histories = StationFiles.Read(folder);
var fit = new LeftOutFit(histories, date, everyYears: 4, iterations: 5, kept);
var constants = fit.Without(null);
Console.WriteLine(JsonSerializer.Serialize(constants.Column));

var reports = new Dictionary<InputSet, List<SoilScoreReport>> { [InputSet.Full] = [], [InputSet.Extremes] = [] };
foreach (var history in histories)
{
    var without = fit.Without(history.StationName);
    foreach (var (inputs, list) in reports)
    {
        list.Add(SoilValidation.Score([history], without, inputs));
    }

    Console.WriteLine($"{history.StationName}: {string.Join("; ", reports.Select(r => $"{r.Key} {string.Join(' ', r.Value[^1].Pooled.Methods.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Key} {m.Value.Rmse:F3}")))}"))}");
}

constants = constants with
{
    Full = constants.Full with { LeftOut = Pool(histories, reports[InputSet.Full]) },
    Extremes = constants.Extremes with { LeftOut = Pool(histories, reports[InputSet.Extremes]) },
};
File.WriteAllText("data/soil-heat.json", JsonSerializer.Serialize(constants, SoilHeatConstants.Json) + "\n");
Directory.CreateDirectory("docs/validation");
var leftOut = reports.ToDictionary(r => r.Key, r => r.Value.SelectMany(x => x.Stations).ToDictionary(s => s.Station, s => s.Methods));
File.WriteAllText("docs/validation/soil-left-out.json", JsonSerializer.Serialize(new { date, pooled = new { full = constants.Full.LeftOut, extremes = constants.Extremes.LeftOut }, stations = leftOut }, SoilHeatConstants.Json) + "\n");
foreach (var (inputs, models) in new[] { (InputSet.Full, constants.Full), (InputSet.Extremes, constants.Extremes) })
{
    foreach (var (method, e) in models.LeftOut)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{inputs,-9} {method,-12} n {e.N} rmse {e.Rmse:F3} mae {e.Mae:F3} bias {e.Bias:F3}"));
    }
}

static Dictionary<string, ErrorSummary> Pool(IReadOnlyList<WeatherHistory> histories, List<SoilScoreReport> reports) => SoilScoreMethods.All
    .Select(m => (Method: m, Each: reports.SelectMany(r => r.Stations).Where(s => s.Methods.ContainsKey(m)).Select(s => s.Methods[m]).ToList()))
    .Where(m => m.Each.Count > 0)
    .ToDictionary(m => m.Method, m => Pooled(m.Each));

static ErrorSummary Pooled(List<ErrorSummary> each)
{
    var n = each.Sum(e => e.N);
    return new ErrorSummary(n, Math.Sqrt(each.Sum(e => e.N * e.Rmse * e.Rmse) / n), each.Sum(e => e.N * e.Mae) / n, each.Sum(e => e.N * e.Bias) / n);
}

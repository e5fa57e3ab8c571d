using System.Globalization;
using System.Text.Json;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Fit;
using Seedfall.Fit.Cover;

// Fits the constants of soil temperature and validates them on stations left out of the fit.
//   dotnet run -c Release --project bench/Seedfall.Fit -- [STATIONS_DIR] [--date YYYY-MM-DD] [--keep-column] [--choice] [--water]
// Writes data/soil-heat.json, docs/validation/soil-left-out.json, the sections on soil temperature and on the choice of the
// seed-down day in docs/validation.md, and their pictures; two minutes on one core. --choice writes the section on the
// choice alone, with the shipped constants, in seconds; --water the section on watering, in minutes. --keep-column takes the column's numbers from the present data/soil-heat.json for every fit, for trying
// features; its errors are then not left out for the column, and nothing is written.
const string Page = "docs/validation.md";
const string Pictures = "docs/validation";
if (args.FirstOrDefault() == "cover")
{
    return CoverVerb.Run(args[1..]);
}

var folder = args.FirstOrDefault(a => !a.StartsWith('-') && Directory.Exists(a))
    ?? Path.Combine(Environment.GetEnvironmentVariable("SEEDFALL_DATA") ?? throw new InvalidOperationException("SEEDFALL_DATA is not set and no folder was given"), "uscrn_daily");
var dateAt = Array.IndexOf(args, "--date");
var date = dateAt >= 0 ? DateOnly.ParseExact(args[dateAt + 1], "yyyy-MM-dd", CultureInfo.InvariantCulture) : DateOnly.FromDateTime(DateTime.UtcNow);
var trial = args.Contains("--keep-column");

var histories = StationFiles.Read(folder);
Directory.CreateDirectory(Pictures);
if (args.Contains("--choice"))
{
    ChoicePage.Write(Page, Pictures, histories);
    return 0;
}

if (args.Contains("--water"))
{
    WaterPage.Write(Page, histories);
    return 0;
}

var fit = new LeftOutFit(histories, date, everyYears: 4, iterations: 7, trial ? SoilHeatConstants.Shipped.Column : null);
var constants = fit.Without(null);
Console.WriteLine(JsonSerializer.Serialize(constants.Column));

var outcomes = new Dictionary<InputSet, List<StationOutcome>> { [InputSet.Full] = [], [InputSet.Extremes] = [] };
foreach (var history in histories)
{
    var without = fit.Without(history.StationName);
    foreach (var (inputs, list) in outcomes)
    {
        list.Add(StationOutcome.Of(history, without, inputs));
    }

    Console.WriteLine($"{history.StationName}: {string.Join("; ", outcomes.Select(o => $"{o.Key} {Line(o.Value[^1])}"))}");
}

constants = constants with
{
    Full = constants.Full with { LeftOut = Pooled(outcomes[InputSet.Full]) },
    Extremes = constants.Extremes with { LeftOut = Pooled(outcomes[InputSet.Extremes]) },
};
foreach (var (inputs, models) in new[] { (InputSet.Full, constants.Full), (InputSet.Extremes, constants.Extremes) })
{
    foreach (var (method, e) in models.LeftOut)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{inputs,-9} {method,-12} n {e.N} rmse {e.Rmse:F3} mae {e.Mae:F3} bias {e.Bias:F3}"));
    }
}

if (!trial)
{
    File.WriteAllText("data/soil-heat.json", JsonSerializer.Serialize(constants, SoilHeatConstants.Json) + "\n");
    var stations = outcomes.ToDictionary(o => o.Key, o => o.Value.ToDictionary(s => s.Station, s => s.Methods.ToDictionary(m => m.Key, m => m.Value.Summary())));
    File.WriteAllText(Path.Combine(Pictures, "soil-left-out.json"), JsonSerializer.Serialize(new { date, pooled = new { full = constants.Full.LeftOut, extremes = constants.Extremes.LeftOut }, stations }, SoilHeatConstants.Json) + "\n");
    ValidationPage.Write(Page, Pictures, constants, outcomes.ToDictionary(o => o.Key, o => (IReadOnlyList<StationOutcome>)o.Value));
    ChoicePage.Write(Page, Pictures, histories);
    WaterPage.Write(Page, histories);
}

return 0;

static string Line(StationOutcome outcome) => string.Join(' ', outcome.Methods.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Key} {m.Value.Summary()?.Rmse:F3}")));

static Dictionary<string, ErrorSummary> Pooled(List<StationOutcome> outcomes) => SoilScoreMethods.All
    .ToDictionary(m => m, m => ValidationPage.Merge(outcomes.Select(o => o.Methods[m]))!);

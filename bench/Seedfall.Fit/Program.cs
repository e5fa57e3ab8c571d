using System.Text.Json;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Fit;

// Fits the soil temperature constants and writes data/soil-heat.json.
// dotnet run -c Release --project bench/Seedfall.Fit -- STATIONS_DIR OUTPUT_JSON YYYY-MM-DD
const double Ridge = 100.0;

var folder = args.Length > 0 ? args[0] : Path.Combine(Environment.GetEnvironmentVariable("SEEDFALL_DATA") ?? throw new ArgumentException("SEEDFALL_DATA is not set"), "uscrn_daily");
var output = args.Length > 1 ? args[1] : "data/soil-heat.json";
var stations = StationFiles.Read(folder);
var constants = new SoilHeatConstants
{
    Fitted = args.Length > 2 ? DateOnly.ParseExact(args[2], "yyyy-MM-dd") : DateOnly.FromDateTime(DateTime.UtcNow),
    Script = "bench/Seedfall.Fit",
    Data = "U.S. Climate Reference Network daily01, daily mean soil temperature at 5 cm, August to November; errors leave-one-station-out, degC",
    Stations = [.. stations.Select(s => s.StationName)],
    Features = RegressionFeatures.Names,
    Full = Fit(InputSet.Full),
    Extremes = Fit(InputSet.Extremes),
};
File.WriteAllText(output, JsonSerializer.Serialize(constants, SoilHeatConstants.Json) + "\n");

FittedModels Fit(InputSet inputs)
{
    var tables = stations.Select(s => FeatureTable.Regression(s, inputs)).ToList();
    var (model, tallies) = LeaveOneOut.Ridge(tables, RegressionFeatures.Names.Count, Ridge);
    var pooled = LeaveOneOut.Pooled(tallies);
    Console.WriteLine($"{inputs}: {pooled}");
    return new FittedModels(model, model, new Dictionary<string, Seedfall.Engine.Validation.ErrorSummary> { ["regression"] = pooled, [SoilTemperature.ProductName] = pooled });
}

using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Validation;

namespace Seedfall.Engine.Simulation;

/// <summary>What was fitted for one input set.</summary>
/// <param name="Regression">The pooled regression on <see cref="RegressionFeatures"/>.</param>
/// <param name="Product">What a plan uses: the same features and the column's answer.</param>
/// <param name="LeftOut">Errors by method on stations left out of the fit, degC: the accuracy a new place can expect.</param>
public sealed record FittedModels(
    LinearModel Regression,
    LinearModel Product,
    IReadOnlyDictionary<string, ErrorSummary> LeftOut)
{
    /// <summary>True where the plain regression did better on stations left out: a plan then uses it, and says so.</summary>
    [JsonIgnore]
    public bool RegressionIsBetter =>
        LeftOut.TryGetValue(SoilScoreMethods.Regression, out var plain) && LeftOut.TryGetValue(SoilScoreMethods.Product, out var product) && plain.Rmse < product.Rmse;
}

/// <summary>The fitted numbers of soil temperature, from <c>data/soil-heat.json</c>: when, from which stations, by which script.</summary>
public sealed record SoilHeatConstants
{
    private const string ResourceName = "soil-heat.json";

    private static readonly Lazy<SoilHeatConstants> Embedded = new(ReadEmbedded);

    /// <summary>How the file is written and read.</summary>
    public static JsonSerializerOptions Json { get; } = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>The constants shipped with the program.</summary>
    public static SoilHeatConstants Shipped => Embedded.Value;

    /// <summary>Day of the fit.</summary>
    public required DateOnly Fitted { get; init; }

    /// <summary>The script that wrote the file.</summary>
    public required string Script { get; init; }

    /// <summary>Data, season and measure.</summary>
    public required string Data { get; init; }

    /// <summary>Stations the numbers were fitted on.</summary>
    public required IReadOnlyList<string> Stations { get; init; }

    /// <summary>Names of the regression's features, in the order of its coefficients.</summary>
    public required IReadOnlyList<string> Features { get; init; }

    /// <summary>Estimates of what was not measured.</summary>
    public required DayEstimateModels Estimates { get; init; }

    /// <summary>The column's numbers.</summary>
    public required HeatParameters Column { get; init; }

    /// <summary>With measured mean temperature and sun.</summary>
    public required FittedModels Full { get; init; }

    /// <summary>With Tmax, Tmin and rain only.</summary>
    public required FittedModels Extremes { get; init; }

    /// <summary>The models of an input set.</summary>
    public FittedModels For(InputSet inputs) => inputs == InputSet.Full ? Full : Extremes;

    private static SoilHeatConstants ReadEmbedded()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"{ResourceName} is not embedded");
        return JsonSerializer.Deserialize<SoilHeatConstants>(stream, Json)
            ?? throw new InvalidOperationException($"{ResourceName} is empty");
    }
}

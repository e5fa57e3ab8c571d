using System.Text.Json;
using System.Text.Json.Serialization;
using Seedfall.Planning.Aftercare;
using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>
/// Everything <c>Islands/spray-now.ts</c> needs to judge on the phone as <see cref="SprayNow"/> does here: the limits, the tables and the
/// words, none of them written twice.
/// </summary>
/// <param name="Sun">The day's sun at the lawn; good for a day or two.</param>
internal sealed record NowData(SprayLimits Limits, DaySun Sun)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    public IReadOnlyList<Beaufort> Beaufort { get; } = Planning.Field.SprayWeather.Beaufort.All;

    public double MetersPerSecondPerMph { get; } = Engine.Units.Speed.FromMilesPerHour(1.0).MetersPerSecond;

    public IReadOnlyList<double> WindProfile { get; } = Engine.Atmosphere.Wind.ProfileCoefficients;

    public IReadOnlyDictionary<SkyCover, double> CloudPct { get; } = SprayNow.CloudPct;

    public WetBulb WetBulb { get; } = new();

    public IReadOnlyDictionary<string, SprayText> Texts { get; } = SprayTexts.All;

    /// <summary>As JSON for a data block of a page; every sign that could end the block is escaped.</summary>
    public string Json() => JsonSerializer.Serialize(this, Options);
}

/// <summary>Stull's wet bulb and the air it was made for.</summary>
internal sealed record WetBulb
{
    public IReadOnlyList<double> Coefficients { get; } = DeltaT.Coefficients;

    public double ColdestC { get; } = DeltaT.ColdestC;

    public double HottestC { get; } = DeltaT.HottestC;

    public double DriestPct { get; } = DeltaT.DriestPct;

    public double DampestPct { get; } = DeltaT.DampestPct;
}

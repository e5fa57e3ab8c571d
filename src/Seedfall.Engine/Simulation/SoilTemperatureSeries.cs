using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation;

/// <summary>How a soil temperature was computed.</summary>
public enum SoilMethod
{
    /// <summary>Pooled regression on smoothed air temperature.</summary>
    Regression,

    /// <summary>Heat column with the regression as corrector.</summary>
    ColumnAndRegression,
}

/// <summary>Daily mean soil temperature at 5 cm (2 in), one value per day of the weather it was computed from.</summary>
/// <param name="Days">The days, as given.</param>
/// <param name="DailyMeanC">Daily mean at 5 cm, degC, aligned to <paramref name="Days"/>.</param>
/// <param name="Climate">The usual year of the place it was computed with.</param>
/// <param name="Method">How it was computed.</param>
/// <param name="Inputs">Which measurements it could use.</param>
/// <param name="LeftOut">Errors of this method with these inputs on measuring stations left out of the fit, August to November, degC.</param>
/// <param name="Statement">Method and accuracy in one plain sentence.</param>
/// <param name="Assumptions">What had to be assumed, one sentence each; empty where nothing.</param>
public sealed record SoilTemperatureSeries(
    IReadOnlyList<WeatherDay> Days,
    double[] DailyMeanC,
    PlaceClimate Climate,
    SoilMethod Method,
    InputSet Inputs,
    ErrorSummary LeftOut,
    string Statement,
    IReadOnlyList<string> Assumptions);

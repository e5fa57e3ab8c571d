namespace Seedfall.Weather.Input;

/// <summary>An input and how it was named: a file found in a folder may be something else than weather and is then passed over.</summary>
internal sealed record ListedInput(WeatherInput Input, bool FromFolder);

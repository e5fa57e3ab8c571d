using System.CommandLine;
using Seedfall.Engine.Weather;
using Seedfall.Weather;

namespace Seedfall.Cli.Commands;

/// <summary>What the user may tell the weather reader beforehand.</summary>
internal sealed class WeatherOptions
{
    private readonly Option<string?> _station = new("--station") { Description = "Read only this station where files hold several." };
    private readonly Option<TemperatureUnit?> _temperature = new("--temperature") { Description = "Unit of temperature columns that name none." };
    private readonly Option<RainUnit?> _rain = new("--rain") { Description = "Unit of rain columns that name none." };

    internal void AddTo(Command command)
    {
        command.Options.Add(_station);
        command.Options.Add(_temperature);
        command.Options.Add(_rain);
    }

    internal WeatherReadOptions Of(ParseResult parsed, Place? lawn) => new()
    {
        Station = parsed.GetValue(_station),
        Temperature = parsed.GetValue(_temperature),
        Rain = parsed.GetValue(_rain),
        Lawn = lawn,
    };
}

using Seedfall.Engine.Weather;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Field.SprayWeather;
using Seedfall.Planning.Ground;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>A lawn's hours ahead, or what is missing for them.</summary>
/// <param name="Outlook">Null where neither a forecast nor days ahead are known.</param>
/// <param name="Now">On the lawn's clock.</param>
/// <param name="WorkHours">How long the spraying takes.</param>
/// <param name="Old">True where a forecast was brought but no hour of it lies ahead.</param>
/// <param name="Kilometers">From the lawn to where the forecast holds; null where it does not say.</param>
public sealed record SprayView(StoredLawn Stored, SprayOutlook? Outlook, DateTimeOffset Now, int WorkHours, bool Old, double? Kilometers)
{
    /// <summary>Hours after which a forecast is called old.</summary>
    private const double FreshHours = 24.0;

    public Lawn Lawn => Stored.Lawn;

    /// <summary>When the forecast was made, for script; empty where it does not say, null where there is none.</summary>
    public string? Issued => Outlook is { } outlook ? outlook.Forecast.Issued is { } issued ? SprayWords.Iso(issued) : "" : null;

    public bool Stale => Outlook?.Forecast.Issued is { } issued && (Now - issued).TotalHours > FreshHours;
}

/// <summary>Judges the hours ahead of a lawn by the forecast brought, else by the days known.</summary>
internal sealed class SprayWork(ForecastShelf forecasts, WeatherShelf weather, TimeProvider clock)
{
    /// <summary>Longest work asked for, hours.</summary>
    public const int LongestWork = 8;

    public DateTimeOffset Now(StoredLawn stored) => LawnClock.Now(stored, clock);

    public async Task<SprayView> Of(StoredLawn stored, int workHours, CancellationToken cancellation)
    {
        var now = Now(stored);
        var brought = forecasts.Read(stored.Row)?.Forecast;
        var isOld = brought is not null && !brought.Hours.Any(h => h.Start.AddHours(1.0) > now);
        var forecast = brought is not null && !isOld ? brought : await FromDays(stored, now, cancellation);
        if (forecast is null)
        {
            return new(stored, null, now, workHours, isOld, null);
        }

        var zone = LawnClock.Zone(stored);
        var local = forecast with { Hours = [.. forecast.Hours.Select(h => h with { Start = TimeZoneInfo.ConvertTime(h.Start, zone) })] };
        var outlook = SprayOutlook.Of(local, stored.Lawn.Place, SprayLabel.Of(stored.Lawn.PreEmergent), now, workHours);
        return new(stored, outlook.Hours.Count == 0 ? null : outlook, now, workHours, isOld, GroundDistance.Km(stored.Lawn.Place, forecast.Place?.LatitudeDeg, forecast.Place?.LongitudeDeg));
    }

    private async Task<HourlyForecast?> FromDays(StoredLawn stored, DateTimeOffset now, CancellationToken cancellation)
    {
        var history = stored.Row.Invented ? DemoTown.Ahead : stored.Row.WeatherId is { } id ? await weather.History(id, cancellation) : null;
        return history is null ? null : DayHours.From(history, stored.Lawn.Place, DateOnly.FromDateTime(now.DateTime), LawnClock.Zone(stored).BaseUtcOffset);
    }
}

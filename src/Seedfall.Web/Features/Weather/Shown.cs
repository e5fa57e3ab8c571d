using System.Globalization;
using Seedfall.Engine.Workings;

namespace Seedfall.Web.Features.Weather;

/// <summary>Weather in words.</summary>
internal static class Shown
{
    public static string Days(WeatherCard card, UnitSystem system)
    {
        var us = system == UnitSystem.UsCustomary;
        return string.Create(CultureInfo.InvariantCulture, $"{card.DayCount:#,##0} days, {FigureText.DateText(card.FirstDay, us)} to {FigureText.DateText(card.LastDay, us)}");
    }

    /// <summary>A distance as a sentence's end; says so where it is not known.</summary>
    public static string Distance(double? km, UnitSystem system) => km is not { } d
        ? "place not in the files"
        : system == UnitSystem.UsCustomary
            ? string.Create(CultureInfo.InvariantCulture, $"{d / 1.609344:0} mi from the lawn")
            : string.Create(CultureInfo.InvariantCulture, $"{d:0} km from the lawn");
}

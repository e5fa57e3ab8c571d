using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>Short values inside a sentence.</summary>
internal static class WalkText
{
    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100.0:0} %");

    public static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    public static string Depth(Depth depth, UnitSystem system) => FigureText.Show(QuantityKind.Depth, depth.Millimeters, system).ToString();
}

using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>Short values inside a sentence.</summary>
internal static class WalkText
{
    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100.0:0} %");

    public static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Grubs on the ground, from a to b, in both systems.</summary>
    public static string Grubs(double low, double high, UnitSystem system)
    {
        const double squareFeetPerSquareMeter = 1.0 / 0.09290304;
        var feet = $"{Number(low)} to {Number(high)} a square foot";
        var meters = string.Create(CultureInfo.InvariantCulture, $"{low * squareFeetPerSquareMeter:0} to {high * squareFeetPerSquareMeter:0} a square meter");
        return system == UnitSystem.UsCustomary ? $"{feet} ({meters})" : $"{meters} ({feet})";
    }

    public static string Depth(Depth depth, UnitSystem system) => FigureText.Show(QuantityKind.Depth, depth.Millimeters, system).ToString();
}

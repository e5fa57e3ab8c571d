using System.Globalization;

namespace Seedfall.Web.Features.Spreader;

/// <summary>A plain chart's frame: values to places on a drawing 360 wide and 220 high.</summary>
/// <param name="MostX">Value at the right edge.</param>
/// <param name="MostY">Value at the upper edge.</param>
/// <param name="LeastX">Value at the left edge.</param>
internal sealed record Chart(double LeastX, double MostX, double MostY)
{
    public const double Left = 46.0;
    public const double Right = 350.0;
    public const double Top = 14.0;
    public const double Bottom = 184.0;

    public string X(double value) => N(Left + (Right - Left) * (value - LeastX) / (MostX - LeastX));

    public string Y(double value) => N(Bottom - (Bottom - Top) * Math.Clamp(value / MostY, 0.0, 1.05));

    public string Path(IEnumerable<(double X, double Y)> points) => "M" + string.Join(" L", points.Select(p => $"{X(p.X)} {Y(p.Y)}"));

    /// <summary>Round values from 0 for marks on an axis, about five of them.</summary>
    public static IEnumerable<double> Marks(double least, double most)
    {
        var rough = (most - least) / 5.0;
        var ten = Math.Pow(10.0, Math.Floor(Math.Log10(rough)));
        var step = ten * (rough / ten) switch { < 1.5 => 1.0, < 3.5 => 2.0, < 7.5 => 5.0, _ => 10.0 };
        for (var value = Math.Ceiling(least / step - 1.0e-9) * step + 0.0; value <= most + 1.0e-9 * step; value += step)
        {
            yield return Math.Round(value, 9) + 0.0;
        }
    }

    public static string N(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    public static string Plain(double value) => (value == 0.0 ? 0.0 : value).ToString("0.##", CultureInfo.InvariantCulture);
}

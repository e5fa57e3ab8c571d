using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Seedfall.Exchange.Paper.Ribbon;

/// <summary>Small shapes drawn around zero, moved to their place on the ribbon.</summary>
internal static partial class RibbonSign
{
    /// <summary>The path of a shape with its middle at a point. Shapes use M, L, H, V, A and Z with whole numbers.</summary>
    public static string At(double x, double y, string shape)
    {
        var text = new StringBuilder();
        foreach (Match part in Part().Matches(shape))
        {
            var numbers = Number().Matches(part.Groups[2].Value).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray();
            text.Append(part.Groups[1].Value).AppendJoin(' ', Moved(part.Groups[1].Value, numbers, x, y).Select(RibbonFrame.N));
        }

        return text.ToString();
    }

    private static IEnumerable<double> Moved(string command, double[] numbers, double x, double y) => command switch
    {
        "H" => numbers.Select(n => n + x),
        "V" => numbers.Select(n => n + y),
        "A" => numbers.Select((n, i) => (i % 7) switch { 5 => n + x, 6 => n + y, _ => n }),
        _ => numbers.Select((n, i) => i % 2 == 0 ? n + x : n + y),
    };

    [GeneratedRegex("([MLHVAZ])([^MLHVAZ]*)")]
    private static partial Regex Part();

    [GeneratedRegex("-?[0-9]+")]
    private static partial Regex Number();
}

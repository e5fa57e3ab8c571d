using System.Globalization;
using System.Security;
using System.Text;

namespace Seedfall.Fit.Plots;

/// <summary>A drawing in the notebook's colors, written as SVG: same inputs, same bytes.</summary>
internal sealed class Sheet
{
    internal const string Paper = "#f6f0e2";
    internal const string Ink = "#1c2f27";
    internal const string Spruce = "#1c3a2e";
    internal const string Straw = "#c9a94e";
    internal const string Pencil = "#b9ab88";
    internal const string Soil = "#5b3f22";

    /// <summary>Water, and nothing else.</summary>
    internal const string Water = "#134b7a";

    private readonly StringBuilder _marks = new();
    private readonly string _head;

    internal Sheet(int width, int height, string title, string description)
    {
        _head = string.Create(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\" role=\"img\" font-family=\"Georgia, 'DejaVu Serif', serif\" font-size=\"13\" fill=\"{Ink}\">\n<title>{Safe(title)}</title>\n<desc>{Safe(description)}</desc>\n<rect width=\"{width}\" height=\"{height}\" fill=\"{Paper}\"/>\n");
        Text(16, 26, title, size: 16, bold: true);
    }

    internal void Save(string file) => File.WriteAllText(file, $"{_head}{_marks}</svg>\n");

    internal void Line(double x1, double y1, double x2, double y2, string color = Pencil, double width = 1.0, string dash = "") =>
        Put($"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\" stroke=\"{color}\" stroke-width=\"{N(width)}\"{(dash.Length > 0 ? $" stroke-dasharray=\"{dash}\"" : "")}/>");

    internal void Path(IEnumerable<(double X, double Y)> points, string color, double width = 2.0, string dash = "") =>
        Put($"<polyline points=\"{string.Join(' ', points.Select(p => $"{N(p.X)},{N(p.Y)}"))}\" fill=\"none\" stroke=\"{color}\" stroke-width=\"{N(width)}\" stroke-linejoin=\"round\"{(dash.Length > 0 ? $" stroke-dasharray=\"{dash}\"" : "")}/>");

    internal void Box(double x, double y, double width, double height, string color, double opacity = 1.0) =>
        Put($"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\" fill=\"{color}\"{(opacity < 1.0 ? $" fill-opacity=\"{opacity.ToString("0.###", CultureInfo.InvariantCulture)}\"" : "")}/>");

    internal void Put(Mark mark, double x, double y)
    {
        var paint = mark.Filled ? $"fill=\"{mark.Color}\" stroke=\"{mark.Color}\"" : $"fill=\"{Paper}\" stroke=\"{mark.Color}\"";
        Put(mark.Shape switch
        {
            Shape.Square => $"<rect x=\"{N(x - 4)}\" y=\"{N(y - 4)}\" width=\"8\" height=\"8\" {paint} stroke-width=\"1.6\"/>",
            Shape.Diamond => $"<path d=\"M{N(x)} {N(y - 5.5)}L{N(x + 5.5)} {N(y)}L{N(x)} {N(y + 5.5)}L{N(x - 5.5)} {N(y)}Z\" {paint} stroke-width=\"1.6\"/>",
            _ => $"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"4.6\" {paint} stroke-width=\"1.6\"/>",
        });
    }

    internal void Text(double x, double y, string text, string anchor = "start", double size = 13, bool bold = false) =>
        Put($"<text x=\"{N(x)}\" y=\"{N(y)}\"{(anchor == "start" ? "" : $" text-anchor=\"{anchor}\"")}{(size == 13 ? "" : $" font-size=\"{N(size)}\"")}{(bold ? " font-weight=\"bold\"" : "")}>{Safe(text)}</text>");

    /// <summary>A row of marks with their names.</summary>
    internal void Legend(double x, double y, params IEnumerable<(Mark Mark, string Name)> entries)
    {
        foreach (var (mark, name) in entries)
        {
            Put(mark, x + 5, y - 4);
            Text(x + 16, y, name);
            x += 30 + (7.2 * name.Length);
        }
    }

    private void Put(string element) => _marks.Append(element).Append('\n');

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Safe(string text) => SecurityElement.Escape(text);
}

/// <summary>Shape of a mark, so that color alone never tells two apart.</summary>
internal enum Shape
{
    Circle,
    Square,
    Diamond,
}

/// <summary>A mark on a sheet.</summary>
internal sealed record Mark(Shape Shape, string Color, bool Filled = true);

/// <summary>A straight scale from values to places on the sheet.</summary>
internal sealed record Axis(double Low, double High, double From, double To)
{
    internal double At(double value) => From + ((value - Low) / (High - Low) * (To - From));

    internal IEnumerable<double> Every(double step)
    {
        for (var k = Math.Ceiling(Low / step); k * step <= High + 1e-9; k++)
        {
            yield return (k * step) + 0.0;
        }
    }
}

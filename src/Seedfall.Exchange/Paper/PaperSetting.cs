using Seedfall.Engine.Workings;

namespace Seedfall.Exchange.Paper;

/// <summary>How figures are set on one page; cascaded to every component on it.</summary>
/// <param name="First">The unit system shown large; the other stands beside it.</param>
/// <param name="Currency">ISO 4217 code of all money.</param>
public sealed record PaperSetting(UnitSystem First = UnitSystem.UsCustomary, string Currency = "USD")
{
    /// <summary>Number of each figure's working in the appendix, by figure id; empty where no appendix is printed.</summary>
    public IReadOnlyDictionary<string, int> WorkingNumbers { get; init; } = new Dictionary<string, int>();

    /// <summary>The figure in the first system.</summary>
    public ShownValue Large(Figure figure)
    {
        var shown = FigureText.Show(figure, First, Currency);
        return shown with { Unit = Signs(shown.Unit) };
    }

    /// <summary>The figure in the other system; null where it reads the same, and for dates.</summary>
    public string? Small(Figure figure)
    {
        if (figure.Kind == QuantityKind.Date)
        {
            return null;
        }

        var other = Signs(FigureText.Show(figure, First == UnitSystem.UsCustomary ? UnitSystem.Metric : UnitSystem.UsCustomary, Currency).ToString());
        return other == Large(figure).ToString() ? null : other;
    }

    /// <summary>Both systems in one text.</summary>
    public string Both(Figure figure) => Small(figure) is { } small ? $"{Large(figure)} ({small})" : Large(figure).ToString();

    /// <summary>Units with the signs paper can carry: ° and ².</summary>
    private static string Signs(string unit) =>
        unit.Replace("degF", "°F", StringComparison.Ordinal).Replace("degC", "°C", StringComparison.Ordinal)
            .Replace("m2", "m²", StringComparison.Ordinal).Replace("m3", "m³", StringComparison.Ordinal);
}

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
    public ShownValue Large(Figure figure) => FigureText.Show(figure, First, Currency);

    /// <summary>The figure in the other system; null where it reads the same.</summary>
    public string? Small(Figure figure)
    {
        var other = FigureText.Show(figure, First == UnitSystem.UsCustomary ? UnitSystem.Metric : UnitSystem.UsCustomary, Currency).ToString();
        return other == Large(figure).ToString() ? null : other;
    }

    /// <summary>Both systems in one text.</summary>
    public string Both(Figure figure) => FigureText.Both(figure, First, Currency);
}

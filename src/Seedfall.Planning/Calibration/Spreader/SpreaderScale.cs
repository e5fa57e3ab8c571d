using System.Globalization;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>The scale on a spreader, as its owner reads it. Openings are numbers; on a scale of letters A is 1, B is 2.</summary>
public sealed record SpreaderScale
{
    private const int MostSteps = 1000;

    /// <summary>A scale; throws where it is none.</summary>
    /// <param name="least">Reading with the gate shut or nearly so.</param>
    /// <param name="greatest">Reading with the gate wide open; above <paramref name="least"/>.</param>
    /// <param name="step">Smallest step it can be set by; at most 1,000 of them on the scale.</param>
    /// <param name="letters">True where the scale has letters.</param>
    public SpreaderScale(double least, double greatest, double step, bool letters = false)
    {
        if (Fault(least, greatest, step, letters) is { } fault)
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, fault);
        }

        (Least, Greatest, Step, Letters) = (least, greatest, step, letters);
    }

    public double Least { get; }

    public double Greatest { get; }

    public double Step { get; }

    public bool Letters { get; }

    /// <summary>Every opening that can be set, from the least to the greatest.</summary>
    public IEnumerable<double> Openings => Enumerable.Range(0, (int)Math.Floor((Greatest - Least) / Step + 1.0e-9) + 1).Select(i => Math.Round(Least + i * Step, 9));

    /// <summary>What keeps three readings from being a scale; null where nothing does.</summary>
    public static string? Fault(double least, double greatest, double step, bool letters = false) =>
        !double.IsFinite(least) || !double.IsFinite(greatest) || least < 0.0 || greatest <= least ? "a greatest opening above the least, and neither below 0, is needed"
        : letters && (least < 1.0 || greatest > 26.0) ? "letters from A to Z are needed"
        : !(step > 0.0) || step > greatest - least ? "a step above 0 that fits on the scale is needed"
        : (greatest - least) / step > MostSteps ? "a scale of at most 1,000 steps is needed"
        : null;

    /// <summary>Place on the scale [-]: 0 at the least opening, 1 at the greatest.</summary>
    public double Place(double opening) => Holds(opening)
        ? Math.Clamp((opening - Least) / (Greatest - Least), 0.0, 1.0)
        : throw new ArgumentOutOfRangeException(nameof(opening), opening, $"an opening from {Show(Least)} to {Show(Greatest)} is needed");

    /// <summary>True where an opening lies on the scale.</summary>
    public bool Holds(double opening) => opening >= Least - 1.0e-9 && opening <= Greatest + 1.0e-9;

    /// <summary>An opening as it stands on the spreader: <c>4.25</c>, or <c>K</c>, or <c>K + 0.5</c>.</summary>
    public string Show(double opening)
    {
        if (!Letters)
        {
            return Number(opening);
        }

        var whole = Math.Floor(opening + 1.0e-9);
        var rest = opening - whole;
        return (char)('A' + (int)whole - 1) + (rest > 1.0e-6 ? $" + {Number(rest)}" : "");
    }

    /// <summary>The opening a text names; null where it names none.</summary>
    public double? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.Trim();
        if (!Letters || text.Length == 0 || !char.IsAsciiLetter(text[0]))
        {
            return Decimal(text);
        }

        var letter = char.ToUpperInvariant(text[0]) - 'A' + 1.0;
        var rest = text[1..].Replace("+", "", StringComparison.Ordinal).Trim();
        return rest.Length == 0 ? letter : Decimal(rest) is { } part and >= 0.0 and < 1.0 ? letter + part : null;
    }

    private static string Number(double value) => (Math.Round(value, 4) is var round && round == 0.0 ? 0.0 : round).ToString("0.####", CultureInfo.InvariantCulture);

    private static double? Decimal(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;
}

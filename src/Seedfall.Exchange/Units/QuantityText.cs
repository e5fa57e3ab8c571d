using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Seedfall.Exchange.Json;

namespace Seedfall.Exchange.Units;

/// <summary>
/// One quantity as text with its unit, for example <c>2400 sq ft</c>: read strictly, written so that reading gives back
/// the same value to the last bit.
/// </summary>
public sealed class QuantityText<T>
    where T : notnull
{
    private readonly string _name;
    private readonly double _least;
    private readonly double _most;
    private readonly UnitName<T>[] _units;

    /// <param name="name">What is measured, in words, for messages.</param>
    /// <param name="least">Smallest number allowed, in the last (canonical) unit.</param>
    /// <param name="most">Largest number allowed, in the last (canonical) unit.</param>
    /// <param name="units">Units in order of preference; the last is the canonical one.</param>
    internal QuantityText(string name, double least, double most, params UnitName<T>[] units) =>
        (_name, _least, _most, _units) = (name, least, most, units);

    /// <summary>Every unit as written back, in order of preference.</summary>
    public IEnumerable<string> Units => _units.Select(u => u.Text);

    /// <summary>What a text should look like, for messages.</summary>
    public string Expected => $"{_name} with its unit, like \"{Example}\" ({Range}; units: {string.Join(", ", Units)})";

    internal JsonFormat<T> Format => new TextFormat<T>(
        t => TryParse(t, out var value) ? new(value) : null, Write, Expected, () => new JsonObject { ["pattern"] = Pattern, ["examples"] = new JsonArray(Example) });

    internal string Example => $"{(_most <= 1.0 || _least > 12.0 ? _least : 12)} {_units[0].Text}";

    private string Range => (_least, _most) switch
    {
        (double.MinValue, _) => "any number",
        (0.0, double.MaxValue) => "not negative",
        _ => FormattableString.Invariant($"{_least} to {_most} {_units[^1].Text}"),
    };

    internal string Pattern
    {
        get
        {
            var spellings = _units.SelectMany(u => u.Also.Prepend(u.Text)).Select(Regex.Escape).Select(s => s.Replace("\\ ", " ", StringComparison.Ordinal));
            return $"^-?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)? ?({string.Join('|', spellings)})$";
        }
    }

    /// <summary>Reads a text like <c>0.5 in/h</c>. No thousands separators, a point as decimal mark, a unit always.</summary>
    public bool TryParse(string text, out T value)
    {
        ArgumentNullException.ThrowIfNull(text);
        value = default!;
        var end = NumberText.Length(text);
        if (end == 0 || !double.TryParse(text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            return false;
        }

        var unit = text[end..];
        unit = unit.StartsWith(' ') ? unit[1..] : unit;
        if (Array.Find(_units, u => u.Text == unit || u.Also.Contains(unit)) is not { } named)
        {
            return false;
        }

        return Make(named, number, out value);
    }

    /// <summary>The shortest text in any of the units that reads back as exactly this value; a zero below nothing is written as zero.</summary>
    public string Write(T value)
    {
        var (best, bestUnit) = ("", "");
        foreach (var unit in _units)
        {
            var number = NumberText.Shortest(unit.In(value) + 0.0, candidate => Make(unit, candidate, out var back) && back.Equals(value));
            if (number is not null && (best.Length == 0 || number.Length < best.Length))
            {
                (best, bestUnit) = (number, unit.Text);
            }
        }

        return best.Length > 0 ? $"{best} {bestUnit}" : throw new ArgumentOutOfRangeException(nameof(value), value, $"{_name} must be {Range}");
    }

    private bool Make(UnitName<T> unit, double number, out T value)
    {
        value = default!;
        if (number < 0.0 && _least >= 0.0)
        {
            return false;
        }

        try
        {
            value = unit.From(number);
        }
        catch (ArgumentOutOfRangeException)
        {
            return false;
        }

        var canonical = _units[^1].In(value);
        return double.IsFinite(canonical) && canonical >= _least && canonical <= _most;
    }
}

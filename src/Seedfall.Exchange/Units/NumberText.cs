using System.Globalization;

namespace Seedfall.Exchange.Units;

/// <summary>Numbers as text, independent of any culture.</summary>
internal static class NumberText
{
    /// <summary>How many leading characters form a number: sign, digits, point and digits, exponent; 0 where there is none.</summary>
    public static int Length(string text)
    {
        var i = text.StartsWith('-') ? 1 : 0;
        var digits = Digits(text, i);
        if (digits == 0)
        {
            return 0;
        }

        i += digits;
        if (i < text.Length && text[i] == '.' && Digits(text, i + 1) is var decimals and > 0)
        {
            i += 1 + decimals;
        }

        if (i < text.Length && text[i] is 'e' or 'E')
        {
            var sign = i + 1 < text.Length && text[i + 1] is '+' or '-' ? 1 : 0;
            var exponent = Digits(text, i + 1 + sign);
            i += exponent > 0 ? 1 + sign + exponent : 0;
        }

        return i;
    }

    /// <summary>The shortest of 15, 16 or 17 digits that passes the test; null where none does.</summary>
    public static string? Shortest(double number, Func<double, bool> isRight)
    {
        foreach (var digits in (string[])["G15", "R"])
        {
            var text = number.ToString(digits, CultureInfo.InvariantCulture);
            if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var back) && isRight(back))
            {
                return text;
            }
        }

        return null;
    }

    private static int Digits(string text, int from)
    {
        var i = from;
        while (i < text.Length && char.IsAsciiDigit(text[i]))
        {
            i++;
        }

        return i - from;
    }
}

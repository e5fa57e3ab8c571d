using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Seedfall.Exchange.Json;

/// <summary>The plain formats all files share.</summary>
internal static partial class Scalars
{
    public static readonly JsonFormat<bool> Truth = new TruthFormat();

    /// <summary>Text with something in it, at most 2,000 characters.</summary>
    public static readonly JsonFormat<string> Words = new TextFormat<string>(
        t => string.IsNullOrWhiteSpace(t) || t.Length > 2000 || t.Any(c => char.IsControl(c) && c is not '\n') ? null : new(t),
        t => t,
        "text of 1 to 2,000 characters",
        () => new JsonObject { ["minLength"] = 1, ["maxLength"] = 2000 });

    /// <summary>Any text, also empty.</summary>
    public static readonly JsonFormat<string> AnyText = new TextFormat<string>(t => new(t), t => t, "text", () => []);

    /// <summary>A stable short id.</summary>
    public static readonly JsonFormat<string> Id = new TextFormat<string>(
        t => IdPattern().IsMatch(t) ? new(t) : null,
        t => t,
        "an id of 1 to 64 lower-case letters, digits and hyphens",
        () => new JsonObject { ["pattern"] = "^[a-z0-9]([a-z0-9-]{0,62}[a-z0-9])?$" });

    public static readonly JsonFormat<double> Number = Decimal(double.MinValue, double.MaxValue);

    public static readonly JsonFormat<int> Count = Whole(0, int.MaxValue);

    /// <summary>Money in the file's currency; digits are kept as written.</summary>
    public static readonly JsonFormat<decimal> Money = new NumberFormat<decimal>(
        t => decimal.TryParse(t, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var d) ? new(d) : null,
        (w, v) => w.WriteNumberValue(v),
        "an amount of money as a plain number, 0 or more",
        () => new JsonObject { ["type"] = "number", ["minimum"] = 0 });

    public static readonly JsonFormat<DateOnly> Date = new TextFormat<DateOnly>(
        t => DateOnly.TryParseExact(t, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d) ? new(d) : null,
        d => d.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        "a date like \"2026-09-08\"",
        () => new JsonObject { ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" });

    public static readonly JsonFormat<TimeOnly> Time = new TextFormat<TimeOnly>(
        t => TimeOnly.TryParseExact(t, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d) ? new(d) : null,
        d => d.ToString("HH:mm", CultureInfo.InvariantCulture),
        "a time like \"06:30\"",
        () => new JsonObject { ["pattern"] = "^([01][0-9]|2[0-3]):[0-5][0-9]$" });

    /// <summary>An instant with the offset of the clock it was read from.</summary>
    public static readonly JsonFormat<DateTimeOffset> Instant = new TextFormat<DateTimeOffset>(
        t => DateTimeOffset.TryParseExact(t, "yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d) ? new(d) : null,
        d => d.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture),
        "an instant like \"2026-09-08T07:30:00-05:00\"",
        () => new JsonObject { ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}[+-][0-9]{2}:[0-9]{2}$" });

    /// <summary>An id made where the entry was written.</summary>
    public static readonly JsonFormat<Guid> Guid = new TextFormat<Guid>(
        t => System.Guid.TryParseExact(t, "D", out var g) ? new(g) : null,
        g => g.ToString("D"),
        "an id like \"0192f0c4-7c1e-7b1a-9d0e-2f7d5a6b8c90\"",
        () => new JsonObject { ["pattern"] = "^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$" });

    public static JsonFormat<double> Decimal(double low, double high) => new NumberFormat<double>(
        t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out var d) && double.IsFinite(d) && d >= low && d <= high ? new(d) : null,
        (w, v) => w.WriteNumberValue(v),
        Bounded(low, high) ? FormattableString.Invariant($"a number from {low} to {high}") : "a finite number",
        () => Bounded(low, high)
            ? new JsonObject { ["type"] = "number", ["minimum"] = low, ["maximum"] = high }
            : new JsonObject { ["type"] = "number" });

    public static JsonFormat<int> Whole(int low, int high) => new NumberFormat<int>(
        t => int.TryParse(t, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n) && n >= low && n <= high ? new(n) : null,
        (w, v) => w.WriteNumberValue(v),
        high == int.MaxValue ? $"a whole number, {low} or more" : $"a whole number from {low} to {high}",
        () => high == int.MaxValue
            ? new JsonObject { ["type"] = "integer", ["minimum"] = low }
            : new JsonObject { ["type"] = "integer", ["minimum"] = low, ["maximum"] = high });

    /// <summary>One fixed text, the version of the format.</summary>
    public static JsonFormat<string> Constant(string text) => new TextFormat<string>(
        t => t == text ? new(t) : null, t => t, $"\"{text}\"", () => new JsonObject { ["enum"] = new JsonArray(text) });

    private static bool Bounded(double low, double high) => low > double.MinValue || high < double.MaxValue;

    [GeneratedRegex("^[a-z0-9]([a-z0-9-]{0,62}[a-z0-9])?$")]
    private static partial Regex IdPattern();
}

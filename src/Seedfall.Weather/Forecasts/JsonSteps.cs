using System.Globalization;
using System.Text.Json;
using Seedfall.Weather.Formats;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Forecasts;

/// <summary>Reads one member's value and leaves the walker on its last token.</summary>
internal delegate void MemberReader(ref JsonWalker walker, string name);

/// <summary>Reads one item and leaves the walker on its last token.</summary>
internal delegate void ItemReader(ref JsonWalker walker);

/// <summary>Walks over objects and arrays.</summary>
internal static class JsonSteps
{
    internal static void Members(ref JsonWalker walker, string what, MemberReader read)
    {
        walker.RequireObject(what);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walker.TryMember(seen, out var name))
        {
            read(ref walker, name);
        }
    }

    internal static void Items(ref JsonWalker walker, string what, ItemReader read)
    {
        if (walker.Token != JsonTokenType.StartArray)
        {
            throw walker.Refuse($"a list of {what}", "something else");
        }

        for (walker.Next(); walker.Token != JsonTokenType.EndArray; walker.Next())
        {
            read(ref walker);
        }
    }

    /// <summary>The text at hand; refused for anything else.</summary>
    internal static string Words(ref JsonWalker walker, string what) =>
        walker.Token == JsonTokenType.String ? walker.Text() : throw walker.Refuse($"text for {what}", "something else");

    /// <summary>An instant with its offset from UTC.</summary>
    internal static DateTimeOffset Instant(ref JsonWalker walker, string what) => ParseInstant(Words(ref walker, what), ref walker);

    internal static DateTimeOffset ParseInstant(string text, ref JsonWalker walker) =>
        DateTimeOffset.TryParseExact(text, ["yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK"], CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant) && instant.Year is > 1900 and < 2200
            ? instant.ToUniversalTime()
            : throw walker.Refuse("an instant such as 2026-09-01T09:00:00Z", $"'{FieldText.Clean(text, 40)}'");
}

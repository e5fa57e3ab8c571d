using System.Text.Json;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Formats;

/// <summary>A NASA POWER answer as it stands: series of raw numbers, their units, the header, the place.</summary>
internal sealed class PowerDocument
{
    private const double UsualFill = -999;

    private readonly List<string> _messages = [];

    internal Dictionary<string, PowerSeries> Series { get; } = new(StringComparer.Ordinal);

    internal Dictionary<string, string> Units { get; } = new(StringComparer.Ordinal);

    /// <summary>The number that stands for a missing value.</summary>
    internal double Fill { get; private set; } = UsualFill;

    /// <summary>True where days and hours are UTC, not local solar time.</summary>
    internal bool IsUtc { get; private set; }

    /// <summary>True where the stamps carry an hour; settled by the first one.</summary>
    internal bool IsHourly { get; private set; }

    internal double? LatitudeDeg { get; private set; }

    internal double? LongitudeDeg { get; private set; }

    internal double? ElevationM { get; private set; }

    internal static PowerDocument Parse(ReadOnlySpan<byte> json, int depth)
    {
        var document = new PowerDocument();
        try
        {
            var walker = new JsonWalker(json, depth);
            document.ReadRoot(ref walker);
            walker.RequireEnd();
        }
        catch (JsonException e)
        {
            throw new RefusedException((int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "JSON", "text that breaks its grammar, ends too soon or nests too deep");
        }

        return document;
    }

    private void ReadRoot(ref JsonWalker walker)
    {
        walker.RequireObject("a NASA POWER answer");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walker.TryMember(seen, out var name))
        {
            switch (name)
            {
                case "geometry": ReadGeometry(ref walker); break;
                case "properties": ReadProperties(ref walker); break;
                case "header": ReadHeader(ref walker); break;
                case "parameters": ReadParameters(ref walker); break;
                case "messages" or "detail" or "message": ReadMessages(ref walker); break;
                default: walker.Skip(); break;
            }
        }

        if (Series.Count == 0)
        {
            var found = _messages.Count > 0 ? "the message " + string.Join("; ", _messages) : "none";
            throw new RefusedException(0, 0, "series of weather under properties.parameter, as NASA POWER gives them", found);
        }
    }

    private void ReadGeometry(ref JsonWalker walker)
    {
        walker.RequireObject("geometry");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walker.TryMember(seen, out var name))
        {
            if (name == "coordinates" && walker.Token == JsonTokenType.StartArray)
            {
                ReadCoordinates(ref walker);
            }
            else
            {
                walker.Skip();
            }
        }
    }

    private void ReadCoordinates(ref JsonWalker walker)
    {
        var parts = new List<double>();
        for (walker.Next(); walker.Token != JsonTokenType.EndArray; walker.Next())
        {
            var number = walker.Number("a coordinate");
            if (parts.Count < 3 && number is { } value)
            {
                parts.Add(value);
            }
        }

        if (parts.Count < 2 || Math.Abs(parts[0]) > 180 || Math.Abs(parts[1]) > 90)
        {
            throw walker.Refuse("coordinates as longitude, latitude", string.Join(", ", parts.Select(p => FormattableString.Invariant($"{p}"))));
        }

        (LongitudeDeg, LatitudeDeg) = (parts[0], parts[1]);
        ElevationM = parts.Count > 2 && Math.Abs(parts[2] - UsualFill) > 0.5 ? parts[2] : null;
    }

    private void ReadProperties(ref JsonWalker walker)
    {
        walker.RequireObject("properties");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walker.TryMember(seen, out var name))
        {
            if (name != "parameter")
            {
                walker.Skip();
                continue;
            }

            walker.RequireObject("parameter");
            var parameters = new HashSet<string>(StringComparer.Ordinal);
            while (walker.TryMember(parameters, out var parameter))
            {
                ReadSeries(ref walker, parameter);
            }
        }
    }

    private void ReadSeries(ref JsonWalker walker, string parameter)
    {
        walker.RequireObject("a parameter's series");
        var series = new PowerSeries();
        while (walker.TryEntry(out var stamp))
        {
            IsHourly = Series.Count == 0 && series.Values.Count == 0 ? stamp > 99_999_999 : IsHourly;
            if (IsHourly != stamp > 99_999_999)
            {
                throw walker.Refuse(IsHourly ? "hours as YYYYMMDDHH" : "days as YYYYMMDD", FormattableString.Invariant($"{stamp}"));
            }

            if (!series.Stamps.Add(stamp))
            {
                throw walker.Refuse("each name once in an object", FormattableString.Invariant($"{stamp}"));
            }

            if (walker.Number("a value") is { } value)
            {
                series.Values.Add((stamp, value, walker.Line()));
            }
        }

        Series.TryAdd(FieldText.Clean(parameter, 40), series);
    }

    private void ReadHeader(ref JsonWalker walker)
    {
        walker.RequireObject("header");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walker.TryMember(seen, out var name))
        {
            if (name == "fill_value")
            {
                Fill = walker.Number("fill_value") ?? UsualFill;
            }
            else if (name == "time_standard" && walker.Token == JsonTokenType.String)
            {
                IsUtc = walker.Text() == "UTC";
            }
            else
            {
                walker.Skip();
            }
        }
    }

    private void ReadParameters(ref JsonWalker walker)
    {
        walker.RequireObject("parameters");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (walker.TryMember(seen, out var parameter))
        {
            walker.RequireObject("a parameter's description");
            var inner = new HashSet<string>(StringComparer.Ordinal);
            while (walker.TryMember(inner, out var name))
            {
                if (name == "units" && walker.Token == JsonTokenType.String)
                {
                    Units[parameter] = FieldText.Clean(walker.Text(), 40);
                }
                else
                {
                    walker.Skip();
                }
            }
        }
    }

    private void ReadMessages(ref JsonWalker walker)
    {
        if (walker.Token == JsonTokenType.String)
        {
            TakeMessage(walker.Text());
        }
        else if (walker.Token == JsonTokenType.StartArray)
        {
            for (walker.Next(); walker.Token != JsonTokenType.EndArray; walker.Next())
            {
                if (walker.Token == JsonTokenType.String)
                {
                    TakeMessage(walker.Text());
                }
                else
                {
                    walker.Skip();
                }
            }
        }
        else
        {
            walker.Skip();
        }
    }

    private void TakeMessage(string text)
    {
        if (_messages.Count < 3)
        {
            _messages.Add(FieldText.Clean(text, 200));
        }
    }
}

/// <summary>The raw numbers of one parameter, in the order of the file.</summary>
internal sealed class PowerSeries
{
    internal HashSet<int> Stamps { get; } = [];

    internal List<(int Stamp, double Value, int Line)> Values { get; } = [];
}

using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Lawns;

/// <summary>Hours of some days of the week.</summary>
internal sealed class WindowFormat : ObjectFormat<WateringWindow>
{
    public static readonly WindowFormat One = new();

    private readonly Field<WateringWindow, WeekDays> _days;
    private readonly Field<WateringWindow, TimeOnly> _from, _to;

    private WindowFormat()
        : base("wateringWindow")
    {
        _days = Usual("days", new WeekDaysFormat(), w => w.Days, WeekDays.All, "Days of the week; every day where absent.");
        _from = Required("from", Scalars.Time, w => w.From, "");
        _to = Required("to", Scalars.Time, w => w.To, "");
    }

    protected override WateringWindow Build(FieldValues v) => new(v.Get(_days), v.Get(_from), v.Get(_to));
}

/// <summary>Days of the week as a list of names.</summary>
internal sealed class WeekDaysFormat : JsonFormat<WeekDays>
{
    private static readonly (WeekDays Day, string Name)[] Names =
        [.. Enum.GetValues<WeekDays>().Where(d => d is not (WeekDays.None or WeekDays.All)).Select(d => (d, NamesOf<WeekDays>.Of(d)))];

    public override bool TryRead(JsonSpot at, ProblemList problems, [MaybeNullWhen(false)] out WeekDays value)
    {
        value = WeekDays.None;
        if (at.Kind != JsonSpotKind.Array)
        {
            problems.Add(at, "a list of days of the week");
            return false;
        }

        var before = problems.Count;
        foreach (var item in at.Items)
        {
            var (day, _) = item.Kind == JsonSpotKind.Text ? Array.Find(Names, n => n.Name == item.Text) : default;
            if (day == WeekDays.None)
            {
                problems.Add(item, $"one of {string.Join(", ", Names.Select(n => n.Name))}");
            }

            value |= day;
        }

        return problems.Count == before;
    }

    public override void Write(Utf8JsonWriter writer, WeekDays value)
    {
        writer.WriteStartArray();
        foreach (var (day, name) in Names)
        {
            if (value.HasFlag(day))
            {
                writer.WriteStringValue(name);
            }
        }

        writer.WriteEndArray();
    }

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "array",
        ["items"] = new JsonObject { ["type"] = "string", ["enum"] = new JsonArray([.. Names.Select(n => JsonValue.Create(n.Name))]) },
    };
}

using System.Text.Json.Nodes;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Logs;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Web.Features.DaySheet;

/// <summary>What is written down at a step's end, as a form the phone fills in and keeps until it is delivered.</summary>
/// <param name="Template">The entry as planned, in the log format.</param>
public sealed record DayForm(DayRecord Record, string Template, IReadOnlyList<DayField> Fields)
{
    /// <summary>The log's own form, for a browser without script.</summary>
    public string PlainAddress(string lawnId) => Record.Entry switch
    {
        LogEntry.SeededDown => $"/lawns/{lawnId}/log/write/seeded",
        LogEntry.FirstGreen => $"/lawns/{lawnId}/log/write/green",
        LogEntry.CoverSeen => $"/lawns/{lawnId}/log/write/cover",
        LogEntry.Watered => $"/lawns/{lawnId}/log/write/watered",
        LogEntry.FingerTest => $"/lawns/{lawnId}/log/write/finger",
        LogEntry.Mowed => $"/lawns/{lawnId}/log/write/mowed",
        LogEntry.Applied => $"/lawns/{lawnId}/records",
        _ => $"/lawns/{lawnId}/log/write/note",
    };

    public static DayForm Of(DayRecord record, UnitSystem system)
    {
        var template = JsonNode.Parse(FieldLogFile.WriteEntry(record.Entry))!;
        return new(record, template.ToJsonString(), [.. FieldsOf(record.Entry, system)]);
    }

    private static IEnumerable<DayField> FieldsOf(LogEntry entry, UnitSystem system)
    {
        switch (entry)
        {
            case LogEntry.Watered watered:
                yield return DayField.Quantity("time", "Ran, in each place", "what.watered.time", watered.Minutes, system, DayUnits.Minutes) with { Required = true };
                break;
            case LogEntry.FingerTest test:
                yield return DayField.Choice<FingerFelt>("felt", "What it found", "what.fingerTest.felt", test.Felt, f => f switch { FingerFelt.TooDry => "Too dry: crumbs", FingerFelt.Right => "Right: moist, holds together", _ => "Soggy: water shows" });
                yield return DayField.Quantity("wet", "Moist down to", "what.fingerTest.wetTo", null, system, DayUnits.Depth);
                break;
            case LogEntry.Mowed mowed:
                yield return DayField.Quantity("to", "Mowed to", "what.mowed.to", mowed.To?.Millimeters, system, DayUnits.Depth);
                break;
            case LogEntry.CoverSeen:
                yield return DayField.Quantity("cover", "Living cover", "what.coverSeen.cover", null, system, DayUnits.Share) with { Required = true };
                yield return DayField.Choice<CoverJudged>("judged", "How it was judged", "what.coverSeen.judged", CoverJudged.ByEye, j => j switch { CoverJudged.ByEye => "By eye", CoverJudged.Counted => "Counted under a grid or hoop", _ => "From a photograph" });
                break;
            case LogEntry.Note:
                yield return new("text", "Note", "what.note.text") { Kind = DayFieldKind.Words, Required = true };
                break;
            case LogEntry.Applied { What: var what }:
                foreach (var field in Applied(what, system))
                {
                    yield return field;
                }

                break;
        }

        if (entry is not LogEntry.Applied)
        {
            yield return new("at", "When", "at") { Kind = DayFieldKind.Instant, Hint = "Blank: now." };
        }

        if (entry is not LogEntry.Note)
        {
            yield return new("remark", "Anything else", "remark") { Kind = DayFieldKind.Words };
        }
    }

    /// <summary>In the order it happens: begun and the weather then, what went on, finished and the weather then.</summary>
    private static IEnumerable<DayField> Applied(Application what, UnitSystem system)
    {
        var sprayed = what.Carrier is not null;
        yield return new("at", "Begun", "at") { Kind = DayFieldKind.Instant, Hint = "Blank: now." };
        foreach (var field in Weather("Weather at start", "start", sprayed, system))
        {
            yield return field;
        }

        yield return Amount(what, system) with { Required = true, Scales = true };
        yield return DayField.Quantity("area", "On", "what.applied.area", what.Area.SquareMeters, system, DayUnits.Area) with { Required = true };
        if (what.Carrier is { } carrier)
        {
            yield return DayField.Quantity("carrier", "Water in the tanks", "what.applied.carrier", carrier.Liters, system, DayUnits.Volume(carrier.Liters));
        }

        yield return new("deviation", "Done otherwise than planned", "what.applied.deviation") { Kind = DayFieldKind.Words };
        yield return new("ended", "Finished", "what.applied.ended") { Kind = DayFieldKind.Instant };
        foreach (var field in Weather("Weather at end", "end", sprayed, system))
        {
            yield return field;
        }

        if (what.Kind == ApplicationKind.Pesticide)
        {
            yield return new("number", "Registration number off the label", "what.applied.registrationNumber") { Value = what.RegistrationNumber, Fold = "Label and applicator" };
        }

        yield return new("applicator", "Who applied it", "what.applied.applicator") { Fold = "Label and applicator" };
        yield return new("license", "License number", "what.applied.license") { Fold = "Label and applicator" };
    }

    private static DayField Amount(Application what, UnitSystem system) => what.Amount.Mass is { } mass
        ? DayField.Quantity("amount", "Really put on", "what.applied.amount.mass", mass.Kilograms, system, DayUnits.Mass(mass.Kilograms))
        : what.Amount.Volume!.Value.Liters is var liters && what.Carrier is null
            ? DayField.Quantity("amount", "Really put on", "what.applied.amount.volume", liters, system, DayUnits.Bulk)
            : DayField.Quantity("amount", "Really put on", "what.applied.amount.volume", liters, system, DayUnits.Volume(liters));

    private static IEnumerable<DayField> Weather(string when, string name, bool open, UnitSystem system)
    {
        var path = name == "end" ? "what.applied.weatherAtEnd" : "what.applied.weatherAtStart";
        IReadOnlyList<DayField> fields =
        [
            DayField.Quantity($"{name}-wind", "Wind at the nozzle", $"{path}.wind", null, system, DayUnits.Speed),
            DayField.Choice<WindFrom>($"{name}-from", "It blows from", $"{path}.from", null, w => w switch
            {
                WindFrom.NorthEast => "Northeast",
                WindFrom.SouthEast => "Southeast",
                WindFrom.SouthWest => "Southwest",
                WindFrom.NorthWest => "Northwest",
                _ => w.ToString(),
            }),
            DayField.Quantity($"{name}-air", "Air", $"{path}.air", null, system, DayUnits.Temperature),
            DayField.Quantity($"{name}-humidity", "Humidity", $"{path}.humidity", null, system, DayUnits.Share),
        ];
        return fields.Select(f => f with { Fold = when, Open = open });
    }
}

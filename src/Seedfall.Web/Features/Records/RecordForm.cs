using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;
using Seedfall.Web.Forms;
using F = Seedfall.Web.Features.Records.RecordFields;

namespace Seedfall.Web.Features.Records;

/// <summary>A record filled into the form and read back from it.</summary>
internal static class RecordForm
{
    /// <summary>The form filled with what was or is to be written.</summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="what">What is known already; null for a blank form.</param>
    /// <param name="at">Start, by the lawn's own clock.</param>
    /// <param name="patchId">Where; null for the whole lawn.</param>
    /// <param name="remark">What else was written.</param>
    /// <param name="system">Units first shown.</param>
    public static Entries Filled(Lawn lawn, Application? what, DateTimeOffset at, string? patchId, string? remark, UnitSystem system)
    {
        var entries = new Entries(system);
        F.Kind.Fill(entries, what?.Kind ?? ApplicationKind.Pesticide);
        F.Product.Fill(entries, what?.Product);
        F.Number.Fill(entries, what?.RegistrationNumber);
        F.Day.Fill(entries, DateOnly.FromDateTime(at.DateTime));
        F.Start.Fill(entries, TimeOnly.FromDateTime(at.DateTime));
        F.End.Fill(entries, what?.Ended is { } ended ? TimeOnly.FromDateTime(ended.DateTime) : null);
        F.Patch(lawn).Fill(entries, lawn.Patches.Select((p, i) => (p.Id, (int?)i)).FirstOrDefault(p => p.Id == patchId).Item2);
        F.Area.Fill(entries, what?.Area ?? LawnArea(lawn));
        F.Mass.Fill(entries, what?.Amount.Mass);
        F.Volume.Fill(entries, what?.Amount.Volume);
        F.Carrier.Fill(entries, what?.Carrier);
        F.Target.Fill(entries, what?.Target);
        F.Method.Fill(entries, what?.Method);
        F.Applicator.Fill(entries, what?.Applicator);
        F.License.Fill(entries, what?.License);
        F.Reentry.Fill(entries, what?.Reentry);
        F.Deviation.Fill(entries, what?.Deviation);
        F.Remark.Fill(entries, remark);
        F.AtStart.Fill(entries, what?.AtStart);
        F.AtEnd.Fill(entries, what?.AtEnd);
        foreach (var (field, active) in F.Active.Select((f, i) => (f, what?.Actives.ElementAtOrDefault(i))))
        {
            field.Name.Fill(entries, active?.Name);
            field.Amount.Fill(entries, active?.Amount);
        }

        return entries;
    }

    /// <summary>Planned quantities as anyone would weigh and write them: four digits, in the unit shown.</summary>
    public static void Round(Entries entries)
    {
        foreach (var name in (string[])[F.Mass.Name, F.Volume.Name, F.Area.Name, F.Carrier.Name, .. F.Active.Select(active => active.Amount.Name)])
        {
            if (NumberText.Parse(entries.Text(name)) is { } value && value > 0.0)
            {
                var decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(value)), 0, 10);
                entries.Put(name, NumberText.Write(Math.Round(value, decimals, MidpointRounding.AwayFromZero)));
            }
        }
    }

    /// <summary>The record the form describes, with every problem noted beside its field; null where there is one.</summary>
    /// <param name="id">Made when the form was shown, so that posting it twice adds nothing.</param>
    /// <param name="lawn">The lawn.</param>
    /// <param name="entries">What was posted.</param>
    /// <param name="clock">The lawn's own clock.</param>
    /// <param name="corrects">The record it stands in place of; null for a first one.</param>
    public static LogEntry.Applied? Read(Guid id, Lawn lawn, Entries entries, Func<DateTime, DateTimeOffset> clock, LogEntry.Applied? corrects)
    {
        var (day, start, end) = (F.Day.Read(entries), F.Start.Read(entries), F.End.Read(entries));
        var (kind, product, area) = (F.Kind.Read(entries), F.Product.Read(entries), F.Area.Read(entries));
        var patch = lawn.Patches.Count == 1 ? corrects?.PatchId : F.Patch(lawn).Read(entries) is { } index ? lawn.Patches[index].Id : null;
        var what = new Application
        {
            Kind = kind ?? default,
            Product = product ?? "",
            Amount = new(F.Mass.Read(entries), F.Volume.Read(entries)),
            Area = area ?? default,
            Ended = day is { } d && start is { } s && end is { } e ? Unmoved(clock(d.AddDays(e < s ? 1 : 0).ToDateTime(e)), corrects?.What.Ended) : null,
            RegistrationNumber = F.Number.Read(entries),
            Actives = Actives(entries, corrects),
            Carrier = F.Carrier.Read(entries),
            Target = F.Target.Read(entries),
            Method = F.Method.Read(entries),
            AtStart = F.AtStart.Read(entries),
            AtEnd = F.AtEnd.Read(entries),
            Applicator = F.Applicator.Read(entries),
            License = F.License.Read(entries),
            Reentry = F.Reentry.Read(entries),
            Deviation = F.Deviation.Read(entries),
            Replaces = corrects?.Id,
            Why = corrects is null ? null : F.Why.Read(entries),
        };
        var remark = F.Remark.Read(entries);
        return entries.Sound && day is { } on && start is { } from
            ? new LogEntry.Applied(what) { Id = id, At = Unmoved(clock(on.ToDateTime(from)), corrects?.At), PatchId = patch, Remark = remark }
            : null;
    }

    /// <summary>The field a rule's problem belongs beside; empty for none.</summary>
    public static string FieldOf(string problem) => problem.Split(':')[0] switch
    {
        "amount" => F.Mass.Name,
        "area" => F.Area.Name,
        "ended" => F.End.Name,
        "product" => F.Product.Name,
        "carrier" => F.Carrier.Name,
        "why" => F.Why.Name,
        "active" => F.Active[0].Name.Name,
        "weather at start" => F.AtStart.First,
        "weather at end" => F.AtEnd.First,
        _ => "",
    };

    /// <summary>A time shown to the minute and not changed stays what it was to the second.</summary>
    private static DateTimeOffset Unmoved(DateTimeOffset typed, DateTimeOffset? before) =>
        before is { } was && was.DateTime.AddSeconds(-was.Second) == typed.DateTime ? was : typed;

    /// <summary>Those of the form, and those of the corrected record that the form has no room for.</summary>
    private static IReadOnlyList<AppliedActive> Actives(Entries entries, LogEntry.Applied? corrects)
    {
        var actives = new List<AppliedActive>();
        foreach (var (field, amount) in F.Active)
        {
            var (name, mass) = (field.Read(entries), amount.Read(entries));
            if (name is null && mass is not null)
            {
                entries.Wrong(field.Name, $"{field.Label}: its name is needed beside its weight.");
            }
            else if (name is not null && mass is null && entries.ProblemOf(amount.Name) is null)
            {
                entries.Wrong(amount.Name, $"{amount.Label}: the weight of {name} is needed; the label gives its share of the product.");
            }
            else if (name is { } named && mass is { } weighed)
            {
                actives.Add(new(named, weighed));
            }
        }

        return [.. actives, .. corrects?.What.Actives.Skip(F.Actives) ?? []];
    }

    private static Area LawnArea(Lawn lawn) => new(PatchGround.Summarize(lawn).Value!.Sum(p => p.Area.Value));
}

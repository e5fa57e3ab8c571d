using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>When watering is allowed or possible.</summary>
internal sealed class HoursLeaf() : ListLeaf<WateringWindow>("hours", "Watering hours", "What the town allows and the day leaves free bounds the rounds. With none entered, any hour is taken.")
{
    private static readonly TicksField<WeekDays> Days = new("days", "Days", Answers.Days) { Required = true };
    private static readonly TimeField From = new("from", "From") { Required = true };
    private static readonly TimeField To = new("to", "To") { Required = true, Hint = "Later than “from”, on the same day. Enter hours past midnight as their own window." };

    public override string Each => "window";

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
        [new("Watering is allowed", [Days, From, To]) { Hint = LawnRules.Remarks(lawn) is { Count: > 0 } remarks ? string.Join(" ", remarks.Select(r => r.Statement)) : null }];

    protected override IReadOnlyList<WateringWindow> Items(Lawn lawn) => lawn.Water?.Allowed ?? [];

    protected override Lawn With(Lawn lawn, IReadOnlyList<WateringWindow> items) => lawn with { Water = (lawn.Water ?? new WaterSupply()) with { Allowed = items } };

    protected override string Gist(WateringWindow item, Lawn lawn, UnitSystem system)
    {
        var days = item.Days == WeekDays.All ? "every day" : string.Join(", ", Answers.Days.Where(d => item.Days.HasFlag(d.Item1)).Select(d => d.Item3));
        return string.Create(CultureInfo.InvariantCulture, $"{days}, {item.From:HH:mm} to {item.To:HH:mm}");
    }

    protected override void FillItem(WateringWindow? before, Lawn lawn, Entries entries)
    {
        var days = before?.Days ?? WeekDays.All;
        Days.Fill(entries, Answers.Days.Select(d => d.Item1).Where(d => days.HasFlag(d)));
        From.Fill(entries, before?.From);
        To.Fill(entries, before?.To);
    }

    protected override WateringWindow? ReadItem(WateringWindow? before, Lawn lawn, Entries entries)
    {
        var (days, from, to) = (Days.Read(entries), From.Read(entries), To.Read(entries));
        if (from is { } f && to is { } t && t <= f)
        {
            entries.Wrong(To.Name, "To: a time later than “from” is needed; enter hours past midnight as their own window.");
        }

        return entries.Sound && from is { } start && to is { } end
            ? new WateringWindow(days.Aggregate(WeekDays.None, (all, day) => all | day), start, end)
            : null;
    }
}

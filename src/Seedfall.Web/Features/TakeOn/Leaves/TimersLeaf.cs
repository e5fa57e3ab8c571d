using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>Timers and controllers, with what they can hold.</summary>
internal sealed class TimersLeaf() : ListLeaf<TimetableTimer>("timers", "Timers", "A timer holds only so many programs and starts a day: a timetable it cannot hold is no timetable.")
{
    private static readonly TextField Name = new("timername", "Name of the timer") { Required = true, Longest = 60, Hint = "For example garage box, or hose timer." };
    private static readonly NumberField Programs = new("programs", "Programs", 1.0, 100.0) { Whole = true, Required = true, Hint = "Often lettered A, B, C on the dial. A plain hose timer has 1." };
    private static readonly NumberField Starts = new("starts", "Starts a day in each program", 1.0, 288.0) { Whole = true, Required = true, Hint = "How many start times one program takes; its manual says." };

    public override string Each => "timer";

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) => [new("The timer", [Name, Programs, Starts])];

    protected override IReadOnlyList<TimetableTimer> Items(Lawn lawn) => lawn.Water?.Timers ?? [];

    protected override Lawn With(Lawn lawn, IReadOnlyList<TimetableTimer> items) => lawn with { Water = (lawn.Water ?? new WaterSupply()) with { Timers = items } };

    protected override string Gist(TimetableTimer item, Lawn lawn, UnitSystem system) =>
        $"{item.Name}: {Count(item.Programs, "program")}, {Count(item.StartsPerDay, "start")} a day";

    protected override void FillItem(TimetableTimer? before, Lawn lawn, Entries entries)
    {
        Name.Fill(entries, before?.Name);
        Programs.Fill(entries, before?.Programs);
        Starts.Fill(entries, before?.StartsPerDay);
    }

    protected override TimetableTimer? ReadItem(TimetableTimer? before, Lawn lawn, Entries entries)
    {
        var (name, programs, starts) = (Name.Read(entries), Programs.ReadWhole(entries), Starts.ReadWhole(entries));
        if (name is not null && Items(lawn).Any(t => !ReferenceEquals(t, before) && string.Equals(t.Name, name, StringComparison.OrdinalIgnoreCase)))
        {
            entries.Wrong(Name.Name, $"{Name.Label}: another timer is already called “{name}”.");
        }

        return entries.Sound && name is not null && programs is { } p && starts is { } s ? new TimetableTimer(name, p, s) : null;
    }

    /// <summary>Sets keep their timer under its new name; a timer described is a timer there.</summary>
    public override Lawn Apply(Lawn lawn, int item, Entries entries)
    {
        var (before, changed) = (Items(lawn), base.Apply(lawn, item, entries));
        if (!entries.Sound || changed.Water is not { } water)
        {
            return lawn;
        }

        var (was, now) = (item < before.Count ? before[item].Name : null, water.Timers[item].Name);
        return changed with
        {
            Water = water with
            {
                Timer = was is null ? true : water.Timer,
                Sets = was is null || was == now ? water.Sets : [.. water.Sets.Select(s => s.Timer == was ? s with { Timer = now } : s)],
            },
        };
    }

    private static string Count(int number, string what) => $"{NumberText.Write(number)} {what}{(number == 1 ? "" : "s")}";
}

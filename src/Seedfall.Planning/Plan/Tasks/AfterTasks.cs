using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>From the seedbed's first day to the last mowing: watering by phase, looking, feeding, mowing, photographs.</summary>
internal static class AfterTasks
{
    private const int FirstMowDays = 21;

    internal static IEnumerable<PlanTask> For(TaskFacts facts, DateOnly seedDown)
    {
        foreach (var phase in facts.Timing.Phases.Where(p => p.Id != "soak"))
        {
            yield return Watering(facts, phase, seedDown);
        }

        yield return LookForGreen(facts, seedDown);
        yield return LookForDisease(seedDown);
        foreach (var feeding in facts.Feed?.Feedings.Where(f => f.DaysAfterSeedDown > 0) ?? [])
        {
            yield return SecondFeed(facts, FeedTask.For(feeding, seedDown.AddDays(feeding.DaysAfterSeedDown!.Value), facts), seedDown);
        }

        foreach (var (days, id) in new[] { (21, "week-3"), (42, "week-6") })
        {
            yield return Photograph(facts, seedDown.AddDays(days), id);
        }

        yield return FirstMow(facts, seedDown);
        yield return Reseed(facts, seedDown);
        yield return Weeds(facts, seedDown);
        foreach (var task in Late(facts))
        {
            yield return task;
        }
    }

    /// <summary>On seed-down day itself the first water stands for the rounds: they begin the next morning.</summary>
    private static PlanTask Watering(TaskFacts facts, Phase phase, DateOnly seedDown)
    {
        var from = phase.From == seedDown && phase.To > seedDown ? seedDown.AddDays(1) : phase.From;
        var watering = WaterLines.Phase(facts, phase.Id);
        return new()
        {
            Id = $"water.{phase.Id}",
            Kind = TaskKind.Water,
            Title = $"Water: {phase.Name}",
            Date = from,
            LastDate = phase.To,
            Start = watering?.Starts is { Count: > 0 } starts ? starts[0] : null,
            Minutes = 15,
            Steps =
            [
                .. watering is null ? [] : new[] { watering.Sentence },
                .. WaterLines.For(facts, phase.Id),
                .. watering?.Starts is { Count: > 0 } times ? new[] { $"Rounds start at {string.Join(", ", times.Select(t => t.ToString("H:mm", System.Globalization.CultureInfo.InvariantCulture)))}." } : [],
                "Check with a finger once a day: the top half to three quarters of an inch should be moist, not soggy.",
            ],
            Conditions = ["Leave a round out when rain has just done it."],
            Figures = watering?.Totals ?? [],
        };
    }

    private static PlanTask LookForGreen(TaskFacts facts, DateOnly seedDown)
    {
        var first = facts.Mix.Count == 0 ? 7.0 : facts.Mix.Min(s => s.GerminationDays.Low);
        var last = facts.Mix.Count == 0 ? 28.0 : facts.Mix.Max(s => s.GerminationDays.High);
        return new()
        {
            Id = "look.emergence",
            Kind = TaskKind.Look,
            Title = "Look for the first green",
            Date = seedDown.AddDays((int)first),
            LastDate = seedDown.AddDays((int)last),
            Minutes = 5,
            Steps =
            [
                "Kneel at a thin spot on each patch every second day and note the day the first seedlings show.",
                .. facts.Mix.Select(s => $"{s.Name}: usually {s.GerminationDays.Low:0} to {s.GerminationDays.High:0} days, later in cool soil."),
            ],
        };
    }

    private static PlanTask LookForDisease(DateOnly seedDown) => new()
    {
        Id = "look.disease",
        Kind = TaskKind.Look,
        Title = "Watch for seedling disease",
        Date = seedDown.AddDays(5),
        LastDate = seedDown.AddDays(28),
        Minutes = 5,
        Steps =
        [
            "After nights that stay above 70 degF and wet, look in the morning for seedlings that topple, greasy spots or cobweb.",
            "If seen: drop the last round of the day, let the surface dry between rounds, take no extra nitrogen, and ask before treating.",
        ],
    };

    private static PlanTask Photograph(TaskFacts facts, DateOnly date, string id) => new()
    {
        Id = $"photo.{id}",
        Kind = TaskKind.Photo,
        Title = "Photograph from the same spots",
        Date = date,
        LastDate = date.AddDays(2),
        Minutes = 10,
        Steps = [.. facts.Lawn.Patches.Select(p => $"{p.Name}: same spot, same height, one straight down.")],
    };

    /// <summary>The day counts from the day seed went down; seedlings must be up to use it.</summary>
    private static PlanTask SecondFeed(TaskFacts facts, PlanTask feed, DateOnly seedDown) =>
        facts.Log.During<LogEntry.FirstGreen>(seedDown, seedDown.AddDays(90)).FirstOrDefault() is { } green
            ? feed with { Steps = [.. feed.Steps, $"The first green was seen on {FigureText.DateText(green.Day)}, {green.Day.DayNumber - seedDown.DayNumber} days after seed-down."] }
            : feed with { Conditions = ["Seedlings are up: before the first green hold it back.", .. feed.Conditions] };

    /// <summary>From growth where it was reckoned, about three weeks after seed-down otherwise; height decides.</summary>
    private static PlanTask FirstMow(TaskFacts facts, DateOnly seedDown)
    {
        var reckoned = facts.Timed("timing.first-mow");
        var date = reckoned?.AsDate() ?? seedDown.AddDays(FirstMowDays);
        return new()
        {
            Id = "mow.first",
            Kind = TaskKind.Mow,
            Title = "First mowing",
            Date = date,
            LastDate = date.AddDays(7),
            Minutes = 45,
            Steps =
            [
                "When most of the new grass stands at 4 in, mow it to 3 in with a sharp blade, turning wide.",
                "Mow again each time it reaches 4 in; note each mowing, for some labels count them.",
                .. reckoned is null ? ["In most seasons the new grass does not reach mowing height before growth ends: the date is the usual three weeks, the height decides."] : Array.Empty<string>(),
            ],
            Conditions = ["Seedlings hold when tugged.", "The soil is firm enough not to rut: skip the round of water before."],
            CautionIds = [Cautions.MachineId],
            Figures = reckoned is null ? [] : [reckoned],
        };
    }

    private static PlanTask Reseed(TaskFacts facts, DateOnly seedDown)
    {
        var from = seedDown.AddDays(21);
        var closes = facts.Timing.Window?.Closes;
        return new()
        {
            Id = "look.thin",
            Kind = TaskKind.Look,
            Title = "Judge the thin spots",
            Date = from,
            LastDate = from.AddDays(7),
            Minutes = 15,
            Steps = closes is { } end && end >= from
                ? [$"Where less than half the ground is green, scratch, seed again with what is left over and keep wet. The window holds until {FigureText.DateText(end)}."]
                : ["The window for another seeding has closed by now: mark the thin spots for dormant seeding or spring and feed what has come up."],
        };
    }

    private static PlanTask Weeds(TaskFacts facts, DateOnly seedDown)
    {
        var from = facts.Timed("timing.seedlings-sprayed");
        var date = from?.AsDate() ?? seedDown.AddDays(42);
        return new()
        {
            Id = "look.weeds",
            Kind = TaskKind.Look,
            Title = "Weeds: not before the mowings the label counts",
            Date = date,
            LastDate = date.AddDays(14),
            Minutes = 10,
            Steps =
            [
                Counted(from),
                .. Asked(facts, from),
                "Pull what is few. Annual weeds of summer die with the first frost.",
                .. facts.Lawn.PreEmergent?.RepeatAfterEmergenceDays is { } days ? new[] { $"A repeat of {facts.Lawn.PreEmergent.ActiveIngredient} is allowed by the label you entered no sooner than {days} days after emergence and only within its yearly maximum." } : [],
            ],
            CautionIds = [Cautions.LabelId],
            Figures = from is null ? [] : [from],
        };
    }

    private static IEnumerable<string> Asked(TaskFacts facts, Figure? from)
    {
        if (facts.Lawn.PreEmergent is { MowingsBeforeSeedlings: { } mowings } label)
        {
            yield return FormattableString.Invariant($"The label you entered lets {label.ActiveIngredient} go on seedlings after {mowings} mowing{(mowings == 1 ? "" : "s")} of the new grass.");
            if (from is null)
            {
                yield return "In most past seasons growth ends before that: count what is noted, not the days.";
            }
        }

        yield return "Most broadleaf labels allow seedlings to be sprayed only after two mowings, some after more: read yours and count the mowings noted.";
    }

    private static string Counted(Figure? from) => (from?.Working.Inputs.FirstOrDefault(input => input.Symbol == "n")?.Value ?? 0.0) switch
    {
        0.0 => "No mowing of the new grass is noted yet.",
        1.0 => "One mowing of the new grass is noted.",
        var n => FormattableString.Invariant($"{n:0} mowings of the new grass are noted."),
    };

    private static IEnumerable<PlanTask> Late(TaskFacts facts)
    {
        var mow = facts.Late.LastMow.AsDate();
        foreach (var feeding in facts.Feed?.Feedings.Where(f => f.DaysAfterSeedDown is null) ?? [])
        {
            yield return FeedTask.For(feeding, feeding.Date, facts);
        }

        yield return new()
        {
            Id = "mow.last",
            Kind = TaskKind.Mow,
            Title = "Last mowing",
            Date = mow,
            LastDate = mow.AddDays(14),
            Minutes = 45,
            Steps = ["Mow to 2.5 to 3 in so that it does not mat under snow, and take the leaves off the seedlings."],
            CautionIds = [Cautions.MachineId],
            Figures = [facts.Late.LastMow],
        };
        yield return Photograph(facts, mow, "end");
    }
}

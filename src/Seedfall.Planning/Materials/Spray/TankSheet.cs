using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>One trip as it is mixed.</summary>
/// <param name="Trip">Amounts, tanks, order, jar test.</param>
/// <param name="Pesticide">True where a pesticide is in it: its measures never go back to a kitchen.</param>
/// <param name="Read">What to read off the measure, tank by tank and product by product, in the trip's order.</param>
/// <param name="PerGallon">Product in each gallon of mix, for a check and for a tank filled by the gallon.</param>
/// <param name="Rinse">Rinsing and where the rinsate goes; null where the hose brings the water and there is no tank.</param>
/// <param name="Notes">Foam and mixing.</param>
public sealed record MixedTrip(SprayTrip Trip, bool Pesticide, IReadOnlyList<IReadOnlyList<string>> Read, IReadOnlyList<Figure> PerGallon, RinsePlan? Rinse, IReadOnlyList<Advice> Notes);

/// <summary>The tank mix of one lawn on one day.</summary>
/// <param name="Day">Day it is mixed.</param>
/// <param name="IsRepeat">True where the record already holds the pre-emergent this year.</param>
/// <param name="Trips">Trips in order; empty where nothing is to be mixed.</param>
/// <param name="Year">The year's use of the pre-emergent.</param>
/// <param name="Walls">What the label or the calendar forbids; a pre-emergent under a wall is in no tank.</param>
/// <param name="Assumptions">What was not entered.</param>
/// <param name="Advice">Lines worth knowing.</param>
/// <param name="Cautions">Shown before anything else.</param>
public sealed record TankSheet(
    DateOnly Day,
    bool IsRepeat,
    IReadOnlyList<MixedTrip> Trips,
    IReadOnlyList<Figure> Year,
    IReadOnlyList<Wall> Walls,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<Advice> Advice,
    IReadOnlyList<Caution> Cautions)
{
    /// <summary>What to mix for a lawn on a day, by its notes and its record.</summary>
    /// <param name="lawn">A lawn without <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">Decide which grasses are seeded.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="log">The field log: every application recorded in the day's calendar year counts.</param>
    /// <param name="day">Day of mixing.</param>
    /// <param name="left">Mix the pump leaves behind; null takes the usual.</param>
    public static TankSheet Of(Lawn lawn, Choices choices, TradeTables tables, FieldLog log, DateOnly day, Volume? left = null)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(log);
        lawn = SurveyedPatch.Of(lawn);
        var patches = PatchGround.Summarize(lawn).Value!;
        var use = lawn.PreEmergent is { } label ? YearUse.Of(lawn, label, log, day.Year) : null;
        var repeat = use is { Recorded: var recorded } && recorded.Applications.Count + recorded.Uncounted.Count > 0;
        if (repeat)
        {
            // This is the repeat: no third is planned after it.
            use = use! with { Label = use.Label with { RepeatAfterEmergenceDays = null } };
        }

        var asked = repeat ? lawn with { PreEmergent = use!.Label } : lawn;
        var section = SprayPlanning.Plan(asked, choices, tables, patches, use, use is null ? [] : [.. Waits(lawn, use, log, choices, day)]);
        var (carrier, tank, _) = SprayPlanning.Equipment(asked, asked.PreEmergent);
        var trips = section.Value?.Trips.Select(t => Mixed(t, asked, use, carrier, tank, patches, left)).ToList() ?? [];
        return new(
            day,
            repeat,
            trips,
            section.Value?.YearlyTotals ?? (use is null ? [] : YearFigures.Of(use.Label, use, false)),
            section.Walls,
            section.Assumptions,
            section.Value?.Advice ?? [],
            [Plan.Cautions.Label, Plan.Cautions.Mix, .. trips.Any(t => t.Trip.IsWeighed) ? [Plan.Cautions.Weigh] : Array.Empty<Caution>(), Plan.Cautions.Spray, .. lawn.AppliedForHire == true ? [Plan.Cautions.Hire] : Array.Empty<Caution>()]);
    }

    /// <summary>The wait before a repeat, and past sprays whose wait seed still stands under.</summary>
    private static IEnumerable<Wall> Waits(Lawn lawn, YearUse use, FieldLog log, Choices choices, DateOnly day)
    {
        if (RepeatWait.For(lawn.PreEmergent!, use.Recorded, log, day) is { } repeat)
        {
            yield return repeat;
        }

        var seeded = log.Standing.OfType<LogEntry.SeededDown>().Any(e => e.Day.Year == choices.Season);
        foreach (var wall in seeded ? [] : SeedingInterval.EarliestSeeding(RecordedSprays.Of(lawn, log, choices.Season), choices.Method).StandingOn(choices.SeedDown ?? day))
        {
            yield return wall;
        }
    }

    private static MixedTrip Mixed(SprayTrip trip, Lawn lawn, YearUse? use, VolumePerArea carrier, Volume? tank, IReadOnlyList<PatchSummary> patches, Volume? left)
    {
        var pesticide = trip.Id == SprayPlanning.PreEmergentTrip;
        var area = Area.FromSquareMeters(patches.Sum(p => p.Area.Value));
        return new(
            trip,
            pesticide,
            [.. trip.Tanks.Select(t => (IReadOnlyList<string>)[.. t.Products.Select(p => DoseMeasure.Words(p, pesticide))])],
            [.. trip.Products.Select((p, i) => PerGallon(trip.Id, i, p, carrier))],
            tank is { } size ? RinsePlan.Of(trip.Id, [.. trip.Products.Select(p => (p.Name, p.Rate.RateOf(), Most(p, lawn, use)))], carrier, size, area, left) : null,
            [.. MixNotes.For(trip)]);
    }

    /// <summary>The highest rate the ground may have come to once the rinsate is on it; null where the label leaves no room known.</summary>
    private static ProductRate? Most(SprayProduct product, Lawn lawn, YearUse? use)
    {
        if (use is null || product.Name != lawn.PreEmergent?.ActiveIngredient || use.Label.MaximumRate is not { } most)
        {
            return null;
        }

        var year = YearlyUse.Maximum(use.Label) is { } y ? y - use.Applied : most;
        return year < most ? year : most;
    }

    private static Figure PerGallon(string trip, int number, SprayProduct product, VolumePerArea carrier) => Worked.Sourced(
        $"mix.{trip}.{number + 1}.gallon", $"{product.Name} in each gallon (3.785 L)", product.Total.Kind, product.Rate.Value / carrier.LitersPerSquareMeter * Volume.FromGallons(1.0).Liters, "product per gallon = rate / carrier",
        "K-State Extension (Wolf)", Sureness.Computed, "Before rounding: the table of tanks is what is measured.",
        product.Rate.RateOf().Input("rate", "label rate"), new WorkingInput("carrier", "carrier put out", carrier.GallonsPerAcre, "gal per acre"));
}
